using Bunit;
using LogBook.Entry.Cautions;
using LogBook.Entry.Drafts;
using LogBook.Entry.Fields;
using LogBook.Entry.State;

namespace LogBook.Web.Tests.Entry;

public sealed class ScanButtonTests
{
    [Theory]
    [InlineData("", "0815-unknown", "0815-unknown", false)]
    [InlineData("A-7731", "0815-unknown", "A-7731", true)]
    [InlineData("A-7731", "A-7731", "A-7731", false)]
    [InlineData("A-7731", "Inhibitor P-40 25 kg LOT: B-1", "A-7731", true)]
    public async Task ScannedText_NeverReplacesALotThatStands(string typed, string scanned, string lot, bool told)
    {
        await using var context = new BunitContext();
        var drum = DraftKey.Of(DraftKey.Systems, "CT-1", "drums", "D-INH");
        var draft = VisitDraft.Start(EntryFirm.Site, "RYA", TimeProvider.System);
        draft.SetText(DraftKey.Under(drum, "lot"), typed);
        var state = new FormState(draft, EntryFirm.Firm, EntryFirm.Site, TimeProvider.System, () => { }, () => { }) { Scan = () => Task.FromResult<string?>(scanned) };
        var button = context.Render<ScanButton>(scan => scan.AddCascadingValue(state).Add(s => s.Drum, drum).Add(s => s.Product, "P-40"));

        await button.Find("button").ClickAsync(new Microsoft.AspNetCore.Components.Web.MouseEventArgs());

        Assert.Equal(lot, draft.Text(DraftKey.Under(drum, "lot")));
        Assert.DoesNotContain(Caution.OtherProduct, state.Cautions);
        Assert.Equal(told, button.Markup.Contains("The lot that stands here was kept", StringComparison.Ordinal));
    }

    [Fact]
    public async Task ScannedLabel_OfAnotherProduct_IsACautionAndNoQuietNote()
    {
        await using var context = new BunitContext();
        var draft = VisitDraft.Start(EntryFirm.Site, "RYA", TimeProvider.System);
        var state = new FormState(draft, EntryFirm.Firm, EntryFirm.Site, TimeProvider.System, () => { }, () => { }) { Scan = () => Task.FromResult<string?>("P-40 LOT: B-1") };
        var button = context.Render<ScanButton>(scan => scan.AddCascadingValue(state).Add(s => s.Drum, "systems/CT-1/drums/D-BIO").Add(s => s.Product, "P-77"));

        await button.Find("button").ClickAsync(new Microsoft.AspNetCore.Components.Web.MouseEventArgs());

        Assert.Equal([Caution.Delivery, Caution.OtherProduct], state.Cautions);
    }
}
