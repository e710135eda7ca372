namespace LogBook.Web.Hosting;

/// <summary>Where the files for browsers lie once LogBook is published.</summary>
public static class PublishedFiles
{
    /// <summary>
    /// Beside the program, wherever it was started from: a service runs in the folder of its data. Null before publishing,
    /// when the files still lie in their projects.
    /// </summary>
    public static string? Folder => File.Exists(Path.Combine(AppContext.BaseDirectory, "wwwroot", "app.css")) ? AppContext.BaseDirectory : null;
}
