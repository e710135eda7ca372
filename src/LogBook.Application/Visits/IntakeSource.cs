namespace LogBook.Application.Visits;

/// <summary>Which way a visit came in.</summary>
public enum IntakeSource
{
    /// <summary>The form on a device.</summary>
    Tablet,

    /// <summary>The form on the server.</summary>
    Page,

    /// <summary>Another program.</summary>
    Api,

    /// <summary>A document with many visits.</summary>
    Import,

    /// <summary>The invented firm.</summary>
    Demo,
}
