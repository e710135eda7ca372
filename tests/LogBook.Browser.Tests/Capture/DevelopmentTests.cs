using LogBook.Browser.Tests.Jobs;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The program as the command for the demo starts it, from the files of the last build.</summary>
public sealed class DevelopmentTests
{
    [Fact]
    public async Task Form_OfABuildThatIsNotPublished_OpensWhenTheServerIsGone()
    {
        var folder = await SampleFolder.MakeAsync(1);
        try
        {
            await using var server = new ServerProcess(folder);
            await server.StartAsync();
            await using var tablet = await Tablet.StartAsync(server.Address, "development");
            await tablet.RegisterAsync();
            await server.TerminateAsync();

            await tablet.SwitchOffAsync();
            await tablet.SwitchOnAsync();

            await tablet.OpenVisitAsync(SampleFolder.Site(0));
            await Expect(tablet.Page.Locator(".lb-form .lb-body")).ToBeVisibleAsync();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
