namespace LogBook.Web.Components;

/// <summary>Light, dark, or as the device says.</summary>
public static class Looks
{
    /// <summary>Cookie with the look chosen on this device.</summary>
    public const string Cookie = "logbook-look";

    /// <summary>As the device says.</summary>
    public const string System = "system";

    /// <summary>Always light.</summary>
    public const string Light = "light";

    /// <summary>Always dark.</summary>
    public const string Dark = "dark";

    /// <summary>The look of a cookie's value.</summary>
    public static string Parse(string? value) => value is Light or Dark ? value : System;
}
