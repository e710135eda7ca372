namespace LogBook.Web.Security;

/// <summary>For what the installation's key ring seals the second keys of tablets.</summary>
internal static class TabletKeyPurpose
{
    /// <summary>Name of the purpose.</summary>
    public const string Name = "LogBook.TabletKeys";
}
