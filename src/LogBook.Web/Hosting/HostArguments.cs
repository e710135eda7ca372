namespace LogBook.Web.Hosting;

/// <summary>Command-line switches without a value, which the configuration would drop or give the next argument as their value.</summary>
public static class HostArguments
{
    private static readonly string[] Switches = ["--demo"];

    /// <summary>The arguments with each bare switch set to true.</summary>
    public static string[] Complete(string[] args) => [.. args.Select(arg => Switches.Contains(arg, StringComparer.OrdinalIgnoreCase) ? arg + "=true" : arg)];
}
