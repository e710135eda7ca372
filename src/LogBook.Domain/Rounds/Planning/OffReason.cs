namespace LogBook.Domain.Rounds.Planning;

/// <summary>Why days are off, as far as others need to know it; nothing about anybody's health.</summary>
public enum OffReason
{
    /// <summary>A person is on leave, whatever the occasion.</summary>
    Leave,

    /// <summary>A person is on a course.</summary>
    Course,

    /// <summary>A person has other work.</summary>
    OtherWork,

    /// <summary>A public holiday of the firm.</summary>
    PublicHoliday,

    /// <summary>The firm does not work: the days between the years.</summary>
    FirmShut,

    /// <summary>The plant of a site is shut.</summary>
    PlantShut,

    /// <summary>Nobody can be let into a site.</summary>
    NoAccess,
}
