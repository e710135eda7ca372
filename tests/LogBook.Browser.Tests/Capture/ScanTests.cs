using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The code on a label: read by the camera where the browser can, typed elsewhere.</summary>
public sealed class ScanTests
{
    // The shape of the platform's detector. It finds the code where the camera's picture is green, so that a picture must have come to it.
    private const string Detector = """
        globalThis.BarcodeDetector = class {
          async detect(source) {
            const canvas = new OffscreenCanvas(8, 8);
            const pen = canvas.getContext("2d");
            pen.drawImage(source, 0, 0, 8, 8);
            const [red, green, blue] = pen.getImageData(4, 4, 1, 1).data;
            return green > 180 && red < 90 && blue < 90 ? [{ rawValue: "P-40 LOT: B-1077", format: "qr_code" }] : [];
          }
        };
        """;

    private static readonly string Lot = TypedVisit.Of("drums", "D-INH", "lot");
    private static readonly string Product = TypedVisit.Of("drums", "D-INH", "productFound");

    [Fact]
    public async Task Camera_SeesTheCode_WhichFillsProductAndLot_AndIsLetGo()
    {
        await using var host = await JobHost.StartAsync();
        using var film = CameraFile.Green();
        await using var tablet = await Tablet.StartAsync(host.Address, "scan", flags: film.Flags, platform: Detector + """
            const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
            navigator.mediaDevices.getUserMedia = async (what) => (globalThis.testCamera = await ask(what));
            """);
        await tablet.RegisterAsync();
        await OpenDrumAsync(tablet);

        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = StepTexts.ScanLabel.En }).First.ClickAsync();

        await Expect(tablet.Page.Field(Product)).ToHaveValueAsync("P-40");
        await Expect(tablet.Page.Field(Lot)).ToHaveValueAsync("B-1077");
        await Expect(tablet.Page.Locator(".lb-scan")).ToHaveCountAsync(0);
        Assert.Equal("ended", await tablet.Page.EvaluateAsync<string>("() => testCamera.getTracks()[0].readyState"));
        await tablet.PictureAsync("scanned");
    }

    [Fact]
    public async Task Camera_Refused_IsSaid_AndTheTextIsTyped()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "scan-refused", platform: Detector + """
            navigator.mediaDevices.getUserMedia = async () => { throw new DOMException("Permission denied", "NotAllowedError"); };
            """);
        await tablet.RegisterAsync();
        await OpenDrumAsync(tablet);

        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = StepTexts.ScanLabel.En }).First.ClickAsync();

        await Expect(tablet.Page.GetByText(StepTexts.NoCamera.En)).ToBeVisibleAsync();
        await tablet.Page.EnterAsync(Lot, "B-1077");
        await tablet.PictureAsync("refused");
    }

    [Fact]
    public async Task Browser_WithoutDetector_OffersNoScan_AndTheTextIsTyped()
    {
        await using var host = await JobHost.StartAsync();
        using var film = CameraFile.Green();
        await using var tablet = await Tablet.StartAsync(host.Address, "scan-none", flags: film.Flags, platform: "delete globalThis.BarcodeDetector;");
        await tablet.RegisterAsync();
        await OpenDrumAsync(tablet);

        await tablet.Page.EnterAsync(Lot, "B-1077");
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = StepTexts.ScanLabel.En })).ToHaveCountAsync(0);
    }

    private static async Task OpenDrumAsync(Tablet tablet)
    {
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Stock.En);
        await tablet.Page.Locator(".lb-item", new() { Has = tablet.Page.Field(TypedVisit.Of("drums", "D-INH", "level")) }).Locator("summary").ClickAsync();
        await Expect(tablet.Page.Field(Lot)).ToBeVisibleAsync();
    }
}
