namespace LogBook.Application.Records;

/// <summary>Which of the records of a system are wanted.</summary>
public enum RecordsOf
{
    /// <summary>Probes and the hand meters they are compared with.</summary>
    Probes,

    /// <summary>Water meters.</summary>
    Meters,

    /// <summary>Feed pumps.</summary>
    Pumps,
}
