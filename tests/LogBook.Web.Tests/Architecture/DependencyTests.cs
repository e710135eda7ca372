using System.Reflection;
using LogBook.Web.Hosting;

namespace LogBook.Web.Tests.Architecture;

/// <summary>Dependencies run one way: Web and Cli to Application to Domain, Web and Capture to Entry to Domain.</summary>
public sealed class DependencyTests
{
    [Theory]
    [InlineData(typeof(Domain.Languages.Text))]
    [InlineData(typeof(LogBook.Entry.Drafts.VisitDraft), "LogBook.Domain")]
    [InlineData(typeof(LogBook.Capture.Visits.VisitOnDevice), "LogBook.Domain", "LogBook.Entry", "LogBook.Papers")]
    [InlineData(typeof(LogBook.Papers.Paper))]
    [InlineData(typeof(Application.Data.LogBookDb), "LogBook.Domain", "LogBook.Papers")]
    [InlineData(typeof(HostSettings), "LogBook.Domain", "LogBook.Application", "LogBook.Entry", "LogBook.Capture", "LogBook.Papers", "LogBook.Migrations.Sqlite", "LogBook.Migrations.PostgreSql")]
    public void Assembly_References_OnlyPartsBelow(Type inside, params string[] allowed)
    {
        var own = Own(inside.Assembly);

        Assert.Empty(own.Except(allowed));
    }

    [Fact]
    public void Domain_References_OnlyTheSystem()
    {
        var foreign = typeof(Domain.Languages.Text).Assembly.GetReferencedAssemblies()
            .Select(name => name.Name!)
            .Where(name => !name.StartsWith("System.", StringComparison.Ordinal) && name is not ("System" or "netstandard" or "mscorlib"));

        Assert.Empty(foreign);
    }

    [Fact]
    public void Papers_Reference_OnlyTheirLibrary()
    {
        var foreign = typeof(LogBook.Papers.Paper).Assembly.GetReferencedAssemblies()
            .Select(name => name.Name!)
            .Where(name => !name.StartsWith("System", StringComparison.Ordinal) && !name.StartsWith("PdfSharp", StringComparison.Ordinal));

        Assert.Empty(foreign);
    }

    // Pages ask feature classes: no page holds a context or a query.
    [Fact]
    public void Pages_HoldNoDatabase()
    {
        var holding = typeof(HostSettings).Assembly.GetTypes()
            .Where(type => typeof(Microsoft.AspNetCore.Components.IComponent).IsAssignableFrom(type))
            .SelectMany(type => type.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
                .Where(property => property.PropertyType == typeof(Application.Data.LogBookDb) || property.PropertyType == typeof(Application.Data.LogBookStore))
                .Select(property => type.Name + "." + property.Name));

        Assert.Empty(holding);
    }

    private static IEnumerable<string> Own(Assembly assembly) =>
        assembly.GetReferencedAssemblies().Select(name => name.Name!).Where(name => name.StartsWith("LogBook", StringComparison.Ordinal));
}
