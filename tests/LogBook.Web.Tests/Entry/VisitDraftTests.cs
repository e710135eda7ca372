using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using Microsoft.Extensions.Time.Testing;

namespace LogBook.Web.Tests.Entry;

public sealed class VisitDraftTests
{
    [Fact]
    public void Start_MakesIdentityAndArrivalWithTheSitesOffset()
    {
        var draft = VisitDraft.Start(EntryFirm.Site, "RYA", new FakeTimeProvider(new DateTimeOffset(2025, 7, 1, 8, 5, 0, TimeSpan.Zero)));

        var visit = draft.ToVisit();

        Assert.Equal(7, visit.Id.Version);
        Assert.Equal("2025-07-01T09:05:00+01:00", visit.Arrived.Text);
        Assert.Equal(("YAF-1", "RYA", VisitKind.Routine), (visit.Site, visit.Technician, visit.Kind));
    }

    [Fact]
    public void Untouched_UntilSomebodyEntersSomething_AlsoThroughJson()
    {
        var draft = VisitDraft.Start(EntryFirm.Site, "RYA", new FakeTimeProvider(new DateTimeOffset(2025, 7, 1, 8, 5, 0, 123, TimeSpan.Zero)));
        Assert.True(draft.IsUntouched);
        draft.SeeCaution("Delivery");
        draft.SetText("visit/notes", "");
        Assert.True(VisitDraft.FromJson(draft.ToJson()).IsUntouched);

        draft.KeepTyped("visit/notes", "n");
        Assert.False(draft.IsUntouched);
        draft.SetText("visit/notes", "");
        Assert.True(draft.IsUntouched);
        draft.SetText("visit/arrived", "2025-07-01T08:55");
        Assert.False(draft.IsUntouched);
        Assert.False(VisitDraft.Start(EntryFirm.Site, "RYA", TimeProvider.System, VisitKind.Stopped).IsUntouched);
    }

    [Fact]
    public void Untouched_OfAnAmendment_WhileItSaysWhatTheVisitSays()
    {
        var draft = VisitDraft.FromJson(VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site).ToJson());
        Assert.True(draft.IsUntouched);

        draft.SetText("visit/amendReason", "dial read wrong");
        Assert.False(draft.IsUntouched);
        draft.SetText("visit/amendReason", null);
        var key = draft.Fields.First(field => field.Key.EndsWith("/dial", StringComparison.Ordinal)).Key;
        draft.SetText(key, "");
        Assert.False(draft.IsUntouched);
    }

    [Fact]
    public void Amend_Untouched_GivesTheVisitBackWholly()
    {
        var again = VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site).Build();

        Assert.Empty(again.Unread);
        Assert.Equal(Json(EntryFirm.Earlier), Json(again.Visit));
    }

    [Fact]
    public void Amend_ThroughJson_GivesTheVisitBackWholly()
    {
        var draft = VisitDraft.FromJson(VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site).ToJson());

        Assert.Equal(Json(EntryFirm.Earlier), Json(draft.ToVisit()));
    }

    [Fact]
    public void Amend_RowTakenAway_LeavesTheOthersAsTheyWere()
    {
        var draft = VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site);

        draft.RemoveRow(draft.Rows("systems/CT-1/observations")[0]);

        var visit = draft.ToVisit();
        Assert.Empty(visit.Systems[0].Observations);
        Assert.Equal(EntryFirm.Earlier.Systems[0].Events, visit.Systems[0].Events);
    }

    [Fact]
    [Trait("goal", "U5")]
    public void Json_RandomDrafts_LoseNothing()
    {
        for (var seed = 1; seed <= 300; seed++)
        {
            var draft = Random(seed);

            var back = VisitDraft.FromJson(draft.ToJson());

            Assert.Equal(draft.Id, back.Id);
            Assert.Equal(draft.CautionsSeen, back.CautionsSeen);
            Assert.Equal(draft.Fields.Keys, back.Fields.Keys);
            foreach (var (key, field) in draft.Fields)
            {
                Assert.True(field == back.Fields[key], $"seed {seed}: {key}");
            }

            Assert.Equal(Json(draft.ToVisit()), Json(back.ToVisit()));
        }
    }

    [Fact]
    [Trait("goal", "U5")]
    public void Build_RandomDrafts_EveryNumberTextIsAValueOrListedAsUnread()
    {
        for (var seed = 1; seed <= 300; seed++)
        {
            var draft = VisitDraft.Start(EntryFirm.Site, "RYA", new FakeTimeProvider());
            var random = new Random(seed);
            var text = Texts[random.Next(Texts.Length)];
            draft.SetText("systems/CT-1/meters/MU/dial", text, "L");

            var build = draft.Build();

            var stored = build.Visit.Systems.SelectMany(s => s.Meters).Any(m => m.Dial is not null);
            var unread = build.Unread.Any(u => u.Text == text);
            Assert.True(stored != unread || text.Trim().Length == 0, $"\"{text}\": stored {stored}, unread {unread}");
        }
    }

    [Theory]
    [InlineData("2025-10-26T01:30", "2025-10-26T00:10:00+01:00", "2025-10-26T01:30:00+01:00")]
    [InlineData("2025-10-26T01:30", "2025-10-26T01:40:00+01:00", "2025-10-26T01:30:00+00:00")]
    [InlineData("2025-03-30T01:30", "2025-03-30T00:10:00+00:00", "2025-03-30T02:30:00+01:00")]
    [InlineData("2025-07-01T09:05", "2025-07-01T09:00:00+01:00", "2025-07-01T09:05:00+01:00")]
    [Trait("goal", "R9")]
    public void Read_WallTimeWhenClocksChange_IsNeverBeforeArrival(string wall, string arrived, string expected)
    {
        var moment = SiteTime.Read(wall, SiteTime.Zone("Europe/London"), EntryFirm.At(arrived));

        Assert.Equal(expected, moment!.Value.Text);
    }

    [Fact]
    public void Keys_WithAnyCharacters_ComeApartAsTheyWereJoined()
    {
        string[] parts = ["systems", "CT/1 %2F", "settings", "biocide-1/bleedDownFirst/minutes", "found"];

        Assert.Equal(parts, DraftKey.Parts(DraftKey.Of(parts)));
    }

    [Fact]
    [Trait("goal", "U6")]
    public void Texts_AreThereInThreeLanguages_WithTheSamePlaces()
    {
        var texts = new[] { typeof(EntryTexts), typeof(StepTexts) }
            .SelectMany(t => t.GetFields())
            .Select(f => (f.Name, Text: (Text)f.GetValue(null)!))
            .Concat(Enum.GetValues<LogBook.Entry.Cautions.Caution>().Select(c => (Name: c.ToString(), Text: LogBook.Entry.Cautions.CautionTexts.Of(c))))
            .ToList();

        Assert.True(texts.Count > 150, $"{texts.Count} texts");
        Assert.All(texts, t =>
        {
            Assert.False(string.IsNullOrWhiteSpace(t.Text.En) || string.IsNullOrWhiteSpace(t.Text.Es) || string.IsNullOrWhiteSpace(t.Text.Pt), t.Name);
            Assert.Equal(Places(t.Text.En), Places(t.Text.Es));
            Assert.Equal(Places(t.Text.En), Places(t.Text.Pt));
        });
    }

    [Fact]
    public void Cautions_NeverPromiseASafeOutcome()
    {
        Assert.All(Enum.GetValues<LogBook.Entry.Cautions.Caution>(), c =>
            Assert.DoesNotMatch("(?i)\\b(safe|compliant|seguro|conforme com|cumple)\\b", LogBook.Entry.Cautions.CautionTexts.Of(c).ToString()));
    }

    private static readonly string[] Texts = ["", "1", "2,5", "1.234", "7..4", "12O", "<5", "abc", "=1+1", "\u0000", "<script>", "ñandú", "\u202e12", "1e3", " 12 ", "-3", new string('9', 40), "\"quoted\"\\"];

    private static string Json(Visit visit) => JsonSerializer.Serialize(visit, ExchangeJson.Default.Visit);

    private static string Places(string text) => string.Concat(Enumerable.Range(0, 10).Where(place => text.Contains("{" + place.ToString(System.Globalization.CultureInfo.InvariantCulture) + "}", StringComparison.Ordinal)));

    private static VisitDraft Random(int seed)
    {
        var random = new Random(seed);
        var draft = random.Next(3) == 0
            ? VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site)
            : VisitDraft.Start(EntryFirm.Site, "RYA", new FakeTimeProvider());
        string[] places =
        [
            "visit/notes", "visit/reason", "visit/left", "visit/samples/1/bottle", "systems/CT-1/clockOffByMin", "systems/CT-1/meters/MU/dial", "systems/CT-1/drums/D-INH/level",
            "systems/CT-1/readings/tower|inhibitor||1/value", "systems/CT-1/readings/tower|chloride||1/drops", "systems/CT-1/probes/C1/asFound", "systems/CT-1/settings/biocide-1%2Fweeks/found",
            "systems/odd%2Fcode/meters/M/dial", "systems/CT-1/actions/5/text", "systems/CT-1/events/6/at", "systems/CT-1/observations/7/text",
        ];
        string?[] units = [null, "", "L", "uS/cm", "mg/L", "[gal_us]"];
        for (var i = random.Next(40); i > 0; i--)
        {
            var key = places[random.Next(places.Length)];
            draft.Set(key, new DraftField
            {
                Text = Texts[random.Next(Texts.Length)],
                Unit = units[random.Next(units.Length)],
                Choice = random.Next(4) == 0 ? random.NextDouble() * 1e6 : null,
                First = random.Next(4) == 0 ? random.NextDouble() : null,
                Confirmed = random.Next(4) == 0,
            });
        }

        if (random.Next(2) == 0)
        {
            draft.SeeCaution("Switches");
        }

        return draft;
    }
}
