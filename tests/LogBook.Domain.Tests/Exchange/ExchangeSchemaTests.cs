using System.Text.Json;
using Json.Schema;
using LogBook.Domain.Exchange;

namespace LogBook.Domain.Tests.Exchange;

public sealed class ExchangeSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(ExchangeSchema.Json());

    private static bool Accepts(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    [Fact]
    public void Json_PublishedFile_IsTheSame()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "LogBook.sln")))
        {
            folder = folder.Parent!;
        }

        Assert.Equal(File.ReadAllText(Path.Combine(folder.FullName, "db", "exchange.schema.json")), ExchangeSchema.Json());
    }

    [Theory]
    [InlineData("set-up")]
    [InlineData("visit")]
    [InlineData("finding")]
    public void Schema_ExamplesOfTheFormat_AreAccepted(string name) => Assert.True(Accepts(Examples.Text(name)));

    // Each of these one reader and schema must refuse alike: both come from one table.
    [Theory]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"value\": 8.1 }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"value\": 8.1, \"unit\": \"pH\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"value\": \"8,1\", \"unit\": \"[pH]\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"unit\": \"[pH]\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"value\": null, \"unit\": \"[pH]\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"chloride\", \"drops\": 12, \"unit\": \"mg/L\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"legionella\", \"notQuantifiable\": true, \"value\": 1, \"unit\": \"[CFU]/mL\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"legionella\", \"notQuantifiable\": false, \"unit\": \"[CFU]/mL\" }]")]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"dip-slide\", \"value\": 1, \"qualifier\": \"<=\", \"unit\": \"[CFU]/mL\" }]")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 41.5 }]")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": -1, \"unit\": \"cm\" }]")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"addedL\": -1 }]")]
    [InlineData("\"hoursRun\": [{ \"output\": \"bleed\", \"hours\": -0.5 }]")]
    [InlineData("\"hoursRun\": [{ \"output\": \"bleed\", \"hours\": 1, \"minutes\": 3 }]")]
    [InlineData("\"switches\": [{ \"output\": \"bleed\", \"found\": \"auto\" }]")]
    [InlineData("\"actions\": [{ \"text\": \"x\", \"due\": \"1/4/2025\" }]")]
    [InlineData("\"actions\": [{ \"text\": \" \" }]")]
    [InlineData("\"programmeWeek\": 1.5")]
    [InlineData("\"events\": [{ \"type\": \"drained\", \"at\": \"2025-03-03T09:05:00\" }]")]
    public void Schema_WhatTheReaderRefuses_IsRefused(string members)
    {
        var json = Examples.VisitWith(members);

        Assert.NotEmpty(ExchangeReader.Read(json).Issues);
        Assert.False(Accepts(json));
    }

    [Theory]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"pH\", \"notTaken\": \"kit empty\", \"unit\": \"[pH]\", \"value\": null }]")]
    [InlineData("\"settings\": [{ \"name\": \"biocide-1/starts\", \"found\": null, \"left\": \"21:30\" }]")]
    [InlineData("\"programmeWeek\": 1.0, \"running\": null, \"drums\": []")]
    public void Schema_WhatTheReaderAccepts_IsAccepted(string members)
    {
        var json = Examples.VisitWith(members);

        Assert.Empty(ExchangeReader.Read(json).Issues);
        Assert.True(Accepts(json));
    }

    [Fact]
    public void Schema_DrumWithoutFieldsOfItsShape_IsRefused()
    {
        var json = Examples.Text("set-up").Replace("\"heightCm\": 62, ", "", StringComparison.Ordinal);

        Assert.False(Accepts(json));
        Assert.Equal("systems[0].drums[0].heightCm", Assert.Single(ExchangeReader.Read(json).Issues).Path);
    }
}
