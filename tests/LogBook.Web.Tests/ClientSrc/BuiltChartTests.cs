using System.Security.Cryptography;
using System.Text;

namespace LogBook.Web.Tests.ClientSrc;

/// <summary>The built chart is committed, so that the application starts without Node; it must be what the source builds.</summary>
public sealed class BuiltChartTests
{
    private static readonly string Web = Path.Combine(Root(), "src", "LogBook.Web");

    [Fact]
    public void BuiltFile_ComparedWithItsSource_IsUpToDate()
    {
        var recorded = File.ReadAllText(Path.Combine(Web, "wwwroot", "lib", "chart.sha256")).Trim();

        var actual = HashOf("ClientSrc/build.mjs", "ClientSrc/chart.mjs", "ClientSrc/option.mjs", "ClientSrc/package-lock.json", "wwwroot/lib/chart.js");

        Assert.True(recorded == actual, "Source and built chart have parted: run `npm ci && npm run build` in src/LogBook.Web/ClientSrc and commit wwwroot/lib.");
    }

    [Fact]
    public void BuiltFile_UnderStrictPolicy_HasNoEvaluatedCode()
    {
        var built = File.ReadAllText(Path.Combine(Web, "wwwroot", "lib", "chart.js"));

        Assert.DoesNotContain("new Function(", built, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"(?<![\w.])eval\(", built);
    }

    [Fact]
    public void LockFile_Always_NamesNoRegistry()
    {
        var lockFile = File.ReadAllText(Path.Combine(Web, "ClientSrc", "package-lock.json"));

        Assert.DoesNotContain("\"resolved\"", lockFile, StringComparison.Ordinal);
        Assert.Contains("\"integrity\"", lockFile, StringComparison.Ordinal);
    }

    private static string HashOf(params string[] files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files)
        {
            var text = File.ReadAllText(Path.Combine(Web, file)).Replace("\r\n", "\n", StringComparison.Ordinal);
            hash.AppendData(Encoding.UTF8.GetBytes(text));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "LogBook.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
