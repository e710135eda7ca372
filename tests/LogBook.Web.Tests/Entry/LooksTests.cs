using Bunit;
using LogBook.Domain.Sites;
using LogBook.Entry.Looks;

namespace LogBook.Web.Tests.Entry;

public sealed class LooksTests
{
    [Fact]
    public async Task Looks_Chosen_AreOnTheFormAndKeptOnTheDevice()
    {
        await using var page = new EntryPage();

        page.Field("Gloves: larger buttons").Change(true);
        page.Field("Left hand types").Change(true);
        page.Type("Brightness", "dark");

        var form = page.Form.Find(".lb-form");
        Assert.Equal(("on", "left", "dark"), (form.GetAttribute("data-gloves"), form.GetAttribute("data-hand"), form.GetAttribute("data-scheme")));
        Assert.Equal("gloves left dark", page.Script.Invocations["keepLooks"][^1].Arguments[0]);
        Assert.Equal(new FormLooks { Gloves = true, LeftHand = true, Dark = true }, FormLooks.Read("gloves left dark"));
    }

    [Fact]
    public async Task Units_SwitchedToUs_AreTheUnitsOfUntouchedFieldsOnly()
    {
        await using var page = new EntryPage(previous: []);
        page.Go("Stock");
        page.Type("D-INH, level as found", "38,5");

        page.Type("Units to begin with", nameof(UnitSystem.Us));
        page.Type("D-INH, Delivered into it", "5");

        Assert.Equal("cm", page.Tower.Drums[0].Unit);
        Assert.Equal(18.92705892, page.Tower.Drums[0].AddedL!.Value, 6);
        Assert.Contains("18.9", page.Group("D-INH, Delivered into it").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(UnitSystem.Us)]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    [InlineData(null)]
    public void Write_ThenRead_IsTheSame(UnitSystem? units)
    {
        var looks = new FormLooks { SideBySide = true, Dark = false, Units = units };

        Assert.Equal(looks, FormLooks.Read(looks.Write()));
    }
}
