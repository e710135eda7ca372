using System.Globalization;
using System.Text.RegularExpressions;
using Bunit;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;

namespace LogBook.Web.Tests.Entry;

/// <summary>What was typed is in the visit, or the close asks for what is missing beside it.</summary>
public sealed class UnfinishedRecordTests
{
    private static readonly string Hardness = new ReadingKey(SamplePoints.Tower, TestCodes.Calcium, null).Part;

    // Fields that a person types, each in a record that may lack any of the others.
    private static readonly string[] Typed =
    [
        .. new[] { "value", "drops", "perDrop", "lot", "dilutionSample", "dilutionTotal" }.Select(field => "readings/" + Hardness + "/" + field),
        .. new[] { "asFound", "reference", "afterCleaning", "asLeft", "settledMin" }.Select(field => "probes/C1/" + field),
        .. new[] { "asFound", "reference", "asLeft" }.Select(field => "probes/PH/" + field),
        .. new[] { "product", "amount", "to", "reason" }.Select(field => "additions/1/" + field),
        .. new[] { "millilitres", "seconds" }.Select(field => "drawdowns/P-INH/" + field),
        .. new[] { "litres", "seconds" }.Select(field => "bleedTest/" + field),
        .. new[] { "hours", "before", "after" }.Select(field => "hoursRun/inhibitor/" + field),
        .. new[] { "text", "output" }.Select(field => "alarms/1/" + field),
        .. new[] { "text", "about" }.Select(field => "observations/1/" + field),
        .. new[] { "text", "owner" }.Select(field => "actions/1/" + field),
        .. new[] { "of", "note", "litres" }.Select(field => "events/1/" + field),
        .. new[] { "dial", "total", "oldFinal" }.Select(field => "meters/MU/" + field),
        .. new[] { "level", "addedL", "lot" }.Select(field => "drums/D-INH/" + field),
    ];

    [Theory]
    [InlineData("additions/1/amount", "0.5", "additions/1/product")]
    [InlineData("additions/1/product", "P-40", "additions/1/amount")]
    [InlineData("probes/C1/asLeft", "1500", "probes/C1/asFound")]
    [InlineData("drawdowns/P-INH/millilitres", "55", "drawdowns/P-INH/seconds")]
    [InlineData("bleedTest/seconds", "31", "bleedTest/litres")]
    [InlineData("actions/1/owner", "RYA", "actions/1/text")]
    [InlineData("alarms/1/output", "bleed", "alarms/1/text")]
    [InlineData("observations/1/about", "basin", "observations/1/text")]
    [InlineData("hoursRun/inhibitor/before", "120", "hoursRun/inhibitor/hours")]
    public void HalfARecord_NamesWhatIsMissing(string typed, string text, string missing)
    {
        var draft = Draft();
        draft.SetText(Key(typed), text);

        Assert.Equal(new UnfinishedRecord(Key(missing), Key(typed)), Assert.Single(draft.Build().Unfinished));

        draft.SetText(Key(missing), "7", "L");
        Assert.Empty(draft.Build().Unfinished);
    }

    [Fact]
    public void WhatTheFormFillsByItself_IsNotAskedFor()
    {
        var draft = Draft();
        draft.SetText(Key("readings/" + Hardness + "/mode"), "drops");
        draft.SetText(Key("readings/" + Hardness + "/perDrop"), "10", "mg/L");
        draft.SetText(Key("additions/1/row"), "new");
        draft.SetText(Key("actions/1/for"), "inhibitor");

        Assert.Empty(draft.Build().Unfinished);
    }

    [Fact]
    public void RowTakenAway_IsNotAskedFor()
    {
        var draft = Draft();
        draft.SetText(Key("additions/1/amount"), "0.5", "L");
        draft.RemoveRow(Key("additions/1"));

        Assert.Empty(draft.Build().Unfinished);
    }

    [Fact]
    [Trait("goal", "U5")]
    public void AnyPartOfAVisit_IsInIt_OrAskedFor()
    {
        for (var seed = 1; seed <= 1_000; seed++)
        {
            var random = new Random(seed);
            var mode = random.GetItems(["", "number", "drops"], 1)[0];
            var draft = Draft();
            draft.SetText(Key("readings/" + Hardness + "/mode"), mode);
            draft.SetText(Key("probes/C1/of"), "Conductivity");
            draft.SetText(Key("probes/PH/of"), "Ph");
            List<(string Key, string Text)> texts = [.. Typed.Where(_ => random.Next(2) == 0).Select((field, i) => (Key(field), (10_001 + i).ToString(CultureInfo.InvariantCulture)))];
            foreach (var (key, text) in texts)
            {
                draft.SetText(key, text, "L");
            }

            var build = draft.Build();
            var json = VisitDocument.Canonical(build.Visit);
            foreach (var (key, text) in texts.Where(one => !IsNoLoss(one.Key, mode)))
            {
                var record = key[..(key.LastIndexOf('/') + 1)];
                Assert.True(
                    Regex.IsMatch(json, $@"\b{text}\b") || build.Unfinished.Any(one => one.Missing.StartsWith(record, StringComparison.Ordinal)),
                    $"seed {seed}: {key} is neither in the visit nor asked for.");
            }
        }
    }

    [Fact]
    public async Task Close_AsksForTheOtherHalf_AndTheReasonCarriesWhatWasTyped()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        page.Press("Add: Product added by hand");
        page.Type("Amount", "0.5");
        page.Go("Close");
        page.Press("Close the visit");

        Assert.Empty(page.Closed);
        Assert.Contains("Product is missing", page.Form.Find(".lb-open").TextContent, StringComparison.Ordinal);

        page.Type("Leave open because", "label torn off");
        page.Press("Close the visit");
        Assert.Contains("“0.5”", Assert.Single(page.Closed).Notes, StringComparison.Ordinal);
    }

    // A count of drops is no part of a test that is read as a number, and the other way round: which it is, the person has said.
    // What a drop stands for is no reading; it is there from the last visit.
    private static bool IsNoLoss(string key, string mode) =>
        key.Contains("/readings/", StringComparison.Ordinal)
        && (key.EndsWith("/perDrop", StringComparison.Ordinal) || key.EndsWith(mode == "drops" ? "/value" : "/drops", StringComparison.Ordinal));

    private static VisitDraft Draft() => VisitDraft.Start(EntryFirm.Site, "RYA", TimeProvider.System);

    private static string Key(string field) => "systems/CT-1/" + field;
}
