namespace LogBook.Web.Hosting;

/// <summary>Name of the firm for the frame; kept in memory, because every page shows it and it hardly ever changes.</summary>
public sealed class FirmNames
{
    /// <summary>Name of the firm; empty before the first run.</summary>
    public string Name { get; private set; } = "";

    /// <summary>Whether the installation has a firm and an administrator.</summary>
    public bool IsSetUp { get; private set; }

    /// <summary>Takes the name on.</summary>
    public void Set(string name)
    {
        Name = name;
        IsSetUp = true;
    }
}
