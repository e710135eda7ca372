namespace LogBook.Domain.Dosing;

/// <summary>Which line of the label a dose would break.</summary>
public enum LabelStopKind
{
    /// <summary>One application.</summary>
    Dose,

    /// <summary>All applications of a week.</summary>
    Week,

    /// <summary>Time between two applications.</summary>
    Gap,

    /// <summary>Contact time.</summary>
    Contact,
}
