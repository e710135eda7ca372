namespace LogBook.Application.Tests.Summaries;

/// <summary>Compares a text with the file that is committed beside the test.</summary>
internal static class GoldenFile
{
    /// <summary>Set to 1, this variable of the environment writes the files instead; the change is then read as a diff.</summary>
    private const string UpdateVariable = "LOGBOOK_UPDATE";

    public static void Equal(string name, string actual)
    {
        var path = Path.Combine(Folder(), name);
        if (Environment.GetEnvironmentVariable(UpdateVariable) == "1")
        {
            File.WriteAllText(path, actual);
        }

        Assert.True(File.Exists(path), $"{name} is not there; {UpdateVariable}=1 writes it.");
        Assert.Equal(File.ReadAllText(path), actual);
    }

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "LogBook.sln")))
        {
            folder = folder.Parent!;
        }

        return Path.Combine(folder.FullName, "tests", "LogBook.Application.Tests", "Summaries", "Golden");
    }
}
