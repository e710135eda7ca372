using LogBook.Bank.Firms;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Runs;

/// <summary>What happened at one system: the records, the truth, and the truth of its twin without the fault.</summary>
/// <param name="System">The system.</param>
/// <param name="Visits">Visits as recorded.</param>
/// <param name="Truths">Truth at each of them.</param>
/// <param name="Twin">Truth of the twin at the same moments: same weather, same people, no fault.</param>
internal sealed record Course(BankSystem System, IReadOnlyList<Visit> Visits, IReadOnlyList<Truth> Truths, IReadOnlyList<Truth> Twin)
{
    public int Count => Visits.Count;

    public DateOnly DayOf(int i) => Truths[i].Day;

    /// <summary>Index of the last visit on or before a day; -1 when there is none.</summary>
    public int IndexOn(DateOnly day)
    {
        var index = -1;
        for (var i = 0; i < Count && Truths[i].Day <= day; i++)
        {
            index = i;
        }

        return index;
    }

    /// <summary>Litres a drum gave up between two visits, through its pump.</summary>
    public double Used(string drum, int from, int to) => Truths[to].UsedL[drum] - Truths[from].UsedL[drum];

    public double Loss(int from, int to) => Truths[to].BledL + Truths[to].LostL - Truths[from].BledL - Truths[from].LostL;

    public double TwinLoss(int from, int to) => Twin[to].BledL + Twin[to].LostL - Twin[from].BledL - Twin[from].LostL;
}
