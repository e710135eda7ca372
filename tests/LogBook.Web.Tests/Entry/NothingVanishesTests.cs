using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using Microsoft.JSInterop;

namespace LogBook.Web.Tests.Entry;

public sealed class NothingVanishesTests
{
    private static readonly string[] Typed = ["1", "95", "2,5", "1.234", "7..4", "12O", "<5", "=1+1", "light algae", "48211", "-3", "1e3", "ñ", "<b>x</b>", ""];
    private static readonly Language[] Languages = [Language.English, Language.Spanish, Language.Portuguese];

    [Fact]
    [Trait("goal", "U5")]
    public async Task RandomWalk_OfAThousandActions_LosesNoTypedText()
    {
        var random = new Random(20250331);
        var expected = new Dictionary<string, string>(StringComparer.Ordinal);
        var page = new EntryPage(EntryFirm.Firm);
        var typed = 0;
        try
        {
            for (var action = 0; action < 1000; action++)
            {
                switch (random.Next(12))
                {
                    case 0:
                        Any(page.Form.FindAll(".lb-step"), random).Click();
                        break;
                    case 1:
                        Any(page.Form.FindAll(".lb-head > .lb-row button"), random).Click();
                        break;
                    case 2:
                        page.Show(Any(Languages, random), random.Next(2) == 0 ? [] : [new Issue("systems[0].readings[0].value", "refused", "Refused.")]);
                        break;
                    case 3 when random.Next(4) == 0:
                        // The browser was killed or the page loaded again: only the kept draft comes back.
                        var kept = page.Draft.ToJson();
                        await page.DisposeAsync();
                        page = new EntryPage(EntryFirm.Firm, VisitDraft.FromJson(kept), Any(Languages, random));
                        break;
                    case 10 when random.Next(4) == 0:
                        // Work stops, goes on, or turns out to be a delivery: steps come and go.
                        var kinds = page.Form.FindAll("#f-visit_2f_kind");
                        if (kinds.Count > 0 && random.Next(2) == 0)
                        {
                            kinds[0].Change(random.Next(4) == 0 ? Any(Enum.GetNames<VisitKind>(), random) : nameof(VisitKind.Routine));
                        }
                        else if (page.Form.FindAll(random.Next(3) == 0 ? ".lb-stop" : ".lb-stopped > .lb-button") is { Count: > 0 } ways)
                        {
                            Any(ways, random).Click();
                        }

                        break;
                    case 11:
                        page.Form.Find("#looks-gloves").Change(random.Next(2) == 0);
                        break;
                    default:
                        if (page.Form.FindAll("[data-key]") is { Count: > 0 } boxes)
                        {
                            var box = Any(boxes, random);
                            var text = Any(Typed, random);
                            expected[box.GetAttribute("data-key")!] = text;
                            box.Change(text);
                            typed++;
                        }

                        break;
                }
            }

            Assert.True(typed > 500, $"{typed} texts typed");
            Assert.True(expected.Count > 60, $"{expected.Count} fields");
            Assert.All(expected, pair => Assert.Equal(pair.Value, page.Draft.Text(pair.Key)));
        }
        finally
        {
            await page.DisposeAsync();
        }
    }

    private static T Any<T>(IReadOnlyList<T> items, Random random) => items[random.Next(items.Count)];

    [Fact]
    [Trait("goal", "U5")]
    public async Task DraftTheHostCouldNotKeep_IsTriedAgain_WithoutAnotherKey()
    {
        await using var page = new EntryPage { KeepFails = new IOException("disk full") };
        page.Type("What changed since the last visit", "gate code");

        page.Clock.Advance(TimeSpan.FromSeconds(1));
        page.Form.WaitForAssertion(() => Assert.Equal(1, page.Asked));
        page.KeepFails = new JSException("no room");
        page.Clock.Advance(TimeSpan.FromSeconds(2));
        page.Form.WaitForAssertion(() => Assert.Equal(2, page.Asked));
        Assert.Empty(page.Kept);

        page.KeepFails = null;
        page.Clock.Advance(TimeSpan.FromSeconds(2));

        page.Form.WaitForAssertion(() => Assert.Contains("gate code", Assert.Single(page.Kept), StringComparison.Ordinal));
        page.Clock.Advance(TimeSpan.FromSeconds(10));
        Assert.Equal(3, page.Asked);
    }

    [Fact]
    public async Task HostThatKeepsNothing_AtTheClose_StillGetsTheVisit()
    {
        await using var page = new EntryPage { KeepFails = new IOException("disk full") };
        page.Press("I cannot work here");
        page.Press("roof or ladder cannot be used");
        page.Go("Close");
        page.Press("Sign as R. Yaffle");
        page.Press("nobody on site");

        page.Press("Close the visit");

        Assert.Single(page.Closed);
        Assert.True(page.Asked > 0);
    }
}
