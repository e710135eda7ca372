namespace LogBook.Domain.Saturation;

/// <summary>Which temperature factor B a Langelier index uses; published examples use one or the other.</summary>
public enum LangelierForm
{
    /// <summary>B = −13.12 log(T + 273) + 34.55; its index is 0.07 to 0.11 lower than the table's between 15 and 50 °C.</summary>
    ClosedForm,

    /// <summary>B from the table of UFC 3-240-13FN.</summary>
    TableForm,
}
