namespace LogBook.Domain.SetPoints;

/// <summary>Why an ion may not be concentrated without end.</summary>
public enum IonLimitKind
{
    /// <summary>Range of the programme in force.</summary>
    Programme,

    /// <summary>Metals of the system.</summary>
    Metal,

    /// <summary>Scale.</summary>
    Scale,

    /// <summary>What the sewer or the permit takes.</summary>
    Discharge,

    /// <summary>Entered by the person.</summary>
    Entered,
}
