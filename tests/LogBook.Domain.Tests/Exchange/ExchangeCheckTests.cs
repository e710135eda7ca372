using LogBook.Domain.Exchange;
using LogBook.Domain.History;

namespace LogBook.Domain.Tests.Exchange;

public sealed class ExchangeCheckTests
{
    private static (string Path, string Code) One(string json, FirmSetUp known)
    {
        var issue = Assert.Single(ExchangeReader.ReadAndCheck(json, known).Issues);
        return (issue.Path, issue.Code);
    }

    [Fact]
    public void Check_SameSetUpAgain_HasNoIssue() => Assert.Empty(ExchangeCheck.Check(Examples.Document("set-up"), Examples.Firm()));

    [Fact]
    public void Check_SetUpThatDiffers_IsToldAndMayBeAllowed()
    {
        var json = Examples.Text("set-up").Replace("\"volumeL\": 10000", "\"volumeL\": 11000", StringComparison.Ordinal);

        Assert.Equal(("systems[0]", ExchangeCheck.SetUpDiffers), One(json, Examples.Firm()));
        var allowed = ExchangeReader.ReadAndCheck(json, Examples.Firm(), mayUpdate: true);
        Assert.Empty(allowed.Issues);
        Assert.Equal(11000, ExchangeCheck.Combine(allowed.Document!, Examples.Firm()).System("yaf-1", "ct-1")!.VolumeL);
    }

    [Theory]
    [InlineData("\"customer\": \"YAF\"", "\"customer\": \"GRO\"", "sites[0].customer", "unknown-code")]
    [InlineData("\"assignedTo\": \"RYA\"", "\"assignedTo\": \"UMB\"", "sites[0].assignedTo", "unknown-code")]
    [InlineData("\"rules\": [\"OXT-LEG\"]", "\"rules\": [\"OXT\"]", "systems[0].rules[0]", "unknown-code")]
    [InlineData("[{ \"code\": \"C1\", \"of\": \"conductivity\" }]", "[{ \"code\": \"C1\", \"of\": \"conductivity\" }, { \"code\": \"c1\", \"of\": \"pH\" }]", "systems[0].probes[1].code", "duplicate-code")]
    [InlineData("{ \"code\": \"D-B1\", \"product\": \"N-15\"", "{ \"code\": \"D-B1\", \"product\": \"N-99\"", "systems[0].drums[1].product", "unknown-code")]
    [InlineData("\"output\": \"inhibitor\", \"ratedLPerH\"", "\"output\": \"inhib\", \"ratedLPerH\"", "systems[0].pumps[0].output", "unknown-code")]
    [InlineData("\"drum\": \"D-B1\", \"output\": \"biocide-1\", \"mode\"", "\"drum\": \"D-B1\", \"output\": \"b\", \"mode\"", "systems[0].programmes[0].feeds[1].output", "unknown-code")]
    [InlineData("\"test\": \"pH\", \"low\": 7.5, \"high\": 9.0", "\"test\": \"pH\", \"low\": 9.5, \"high\": 9.0", "systems[0].programmes[0].ranges[1].high", "wrong-order")]
    [InlineData("\"test\": \"legionella\", \"everyDays\"", "\"test\": \"legionela\", \"everyDays\"", "rules[0].test", "unknown-code")]
    [InlineData("\"retestDays\": [3, 7]", "\"retestDays\": [7, 3]", "rules[0].retestDays[1]", "wrong-order")]
    [InlineData("\"to\": \"2026-01-02\"", "\"to\": \"2025-01-02\"", "systems[0].operation.stops[0].to", "wrong-order")]
    [InlineData("\"neverWith\": [\"biocide:oxidising\"]", "\"neverWith\": [\"X-1\"]", "products[1].neverWith[0]", "unknown-code")]
    [InlineData("\"timeZone\": \"Europe/London\"", "\"timeZone\": \"GMT Standard Time\"", "sites[0].timeZone", "unknown-time-zone")]
    [InlineData("\"output\": \"inhibitor\", \"mode\": \"by-make-up-volume\", \"everyL\": 1000", "\"output\": \"inhibitor\", \"mode\": \"by-orp\", \"setPoint\": 300, \"differential\": 20, \"unit\": \"mg/L\", \"direction\": \"up\", \"longestFeedMin\": 30", "systems[0].programmes[0].feeds[0].unit", "unit-mismatch")]
    [InlineData("\"shape\": \"vertical-cylinder\", \"capacityL\": 25, \"heightCm\": 40", "\"shape\": \"table\", \"points\": [[0, 0], [10, 6], [8, 9]], \"capacityL\": 25", "systems[0].drums[1].points[2]", "wrong-order")]
    public void Check_SetUpThatDoesNotAgree_IsToldWithItsPath(string old, string changed, string path, string code)
    {
        var json = Examples.Text("set-up");
        Assert.Contains(old, json, StringComparison.Ordinal);

        var issue = One(json.Replace(old, changed, StringComparison.Ordinal), FirmSetUp.Empty);

        Assert.Equal((path, code), issue);
    }

    [Theory]
    [InlineData("\"readings\": [{ \"at\": \"basin\", \"test\": \"pH\", \"value\": 8, \"unit\": \"[pH]\" }]", "readings[0].at", "unknown-code")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"ph\", \"value\": -8, \"unit\": \"[pH]\" }]", "readings[0].value", "negative")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"value\": 8, \"unit\": \"[pH]\", \"instrument\": \"HM-9\" }]", "readings[0].instrument", "unknown-code")]
    [InlineData("\"probes\": [{ \"probe\": \"C9\", \"asFound\": 1200, \"unit\": \"uS/cm\" }]", "probes[0].probe", "unknown-code")]
    [InlineData("\"probes\": [{ \"of\": \"pH\", \"asFound\": 8, \"unit\": \"[pH]\" }]", "probes[0].probe", "required")]
    [InlineData("\"probes\": [{ \"asFound\": 8, \"unit\": \"[pH]\" }]", "probes[0].unit", "unit-mismatch")]
    [InlineData("\"meters\": [{ \"meter\": \"MX\", \"dial\": 1 }]", "meters[0].meter", "unknown-code")]
    [InlineData("\"meters\": [{ \"meter\": \"MU\", \"dial\": 10000000 }]", "meters[0].dial", "out-of-range")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 75, \"unit\": \"cm\" }]", "drums[0].level", "beyond-capacity")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 120, \"unit\": \"%\" }]", "drums[0].level", "beyond-capacity")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 17, \"unit\": \"[gal_us]\" }]", "drums[0].level", "beyond-capacity")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 20, \"unit\": \"kg\" }]", "drums[0].unit", "unit-mismatch")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"addedL\": 200 }]", "drums[0].addedL", "beyond-capacity")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"addedL\": 1 }, { \"drum\": \"d-inh\", \"addedL\": 1 }]", "drums[1].drum", "duplicate-code")]
    [InlineData("\"switches\": [{ \"output\": \"x\" }]", "switches[0].output", "unknown-code")]
    [InlineData("\"additions\": [{ \"product\": \"P-41\", \"amount\": 1, \"unit\": \"L\" }]", "additions[0].product", "unknown-code")]
    public void Check_VisitThatDoesNotFitTheSetUp_IsToldWithItsPath(string members, string path, string code) =>
        Assert.Equal(("visits[0].systems[0]." + path, code), One(Examples.VisitWith(members), Examples.Firm()));

    [Theory]
    [InlineData("\"version\": 2, \"amends\": 1, \"amendedBy\": \"RYA\", \"amendedAt\": \"2025-03-04T08:00:00Z\"", "visits[0].reason", "required")]
    [InlineData("\"version\": 2, \"amends\": 2, \"amendedBy\": \"RYA\", \"amendedAt\": \"2025-03-04T08:00:00Z\", \"reason\": \"slip\"", "visits[0].amends", "wrong-version")]
    [InlineData("\"amends\": 1", "visits[0].version", "wrong-version")]
    [InlineData("\"kind\": \"stopped\"", "visits[0].reason", "required")]
    [InlineData("\"also\": [\"UMB\"]", "visits[0].also[0]", "unknown-code")]
    [InlineData("\"left\": \"2025-03-03T10:04:00+01:00\"", "visits[0].left", "left-before-arrived")]
    public void Check_VisitHeadThatDoesNotAgree_IsToldWithItsPath(string visitMembers, string path, string code) =>
        Assert.Equal((path, code), One(Examples.VisitWith("", visitMembers), Examples.Firm()));

    [Fact]
    public void Check_LotThatNobodyDeclared_IsTakenAsNew() => Assert.Empty(ExchangeReader.ReadAndCheck(
        Examples.VisitWith("\"readings\": [{ \"at\": \"tower\", \"test\": \"inhibitor\", \"value\": 95, \"unit\": \"mg/L\", \"lot\": \"NEW-1\" }]"),
        Examples.Firm()).Issues);
}
