namespace LogBook.Application.DueLists;

/// <summary>What changed since somebody was at a site.</summary>
public enum SinceKind
{
    /// <summary>Somebody else visited.</summary>
    Visit,

    /// <summary>A setting was changed.</summary>
    Setting,

    /// <summary>A result came in.</summary>
    Result,

    /// <summary>A finding was opened.</summary>
    Finding,

    /// <summary>A visit was amended.</summary>
    Amendment,
}
