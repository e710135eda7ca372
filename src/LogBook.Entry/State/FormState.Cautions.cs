using LogBook.Entry.Cautions;

namespace LogBook.Entry.State;

/// <summary>The cautions that stand in the form: each once per act, system and visit, and the same words never twice at a time.</summary>
public sealed partial class FormState
{
    private readonly List<(Caution Caution, string Act)> _cautions = [];

    /// <summary>Cautions to show now.</summary>
    public IReadOnlyList<Caution> Cautions => Noted(FormReads.Cautions, _cautions).Select(c => c.Caution).Distinct().ToList();

    /// <summary>Shows the cautions of an act that were not read at this act before.</summary>
    /// <param name="act">The act with its system, as <see cref="ActCautions.ActOf"/> names it.</param>
    /// <param name="cautions">The cautions.</param>
    public void Warn(string act, params IEnumerable<Caution> cautions)
    {
        foreach (var caution in cautions)
        {
            if (!Draft.CautionsSeen.Contains(Seen(caution, act)) && !_cautions.Contains((caution, act)))
            {
                _cautions.Add((caution, act));
                Tell(FormReads.Cautions);
            }
        }
    }

    /// <summary>Shows the cautions of the step in hand.</summary>
    public void WarnOfStep() => Warn(Key(Step.ToString()), SiteCautions.At(this, Step));

    /// <summary>Another step is entered: a caution that nobody acknowledged comes back with its act.</summary>
    public void LeaveCautions()
    {
        if (_cautions.Count > 0)
        {
            _cautions.Clear();
            Tell(FormReads.Cautions);
        }
    }

    /// <summary>The person read a caution, for every act that shows it now.</summary>
    /// <param name="caution">The caution.</param>
    public void SeeCaution(Caution caution)
    {
        foreach (var (_, act) in _cautions.Where(c => c.Caution == caution))
        {
            Draft.SeeCaution(Seen(caution, act));
        }

        _cautions.RemoveAll(c => c.Caution == caution);
        Tell(FormReads.Cautions);
        Edited();
    }

    private static string Seen(Caution caution, string act) => $"{act}:{caution}";
}
