using System.Text.RegularExpressions;
using LogBook.Application.Data;
using LogBook.Application.Mail;
using LogBook.Testing.Readers;
using Microsoft.Data.Sqlite;

namespace LogBook.Application.Tests.Readers;

/// <summary>What pages send to the database: as many statements for ten times the sites, and no walk through all visits or readings.</summary>
public sealed partial class ReaderPagesTests
{
    // Tables that grow with every visit.
    private static readonly string[] Growing = ["Visits", "VisitVersions", "Readings", "Photos", "Figures", "Outbox"];

    [Fact]
    [Trait("goal", "P2")]
    public async Task Pages_TenTimesTheSites_SendTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await ReaderPages.AddSiteAsync(firm, 0);
        var few = await CountAllAsync(firm);
        for (var i = 1; i < 10; i++)
        {
            await ReaderPages.AddSiteAsync(firm, i);
        }

        var many = await CountAllAsync(firm);

        Assert.Equal(few, many);
        Assert.All(many, page => Assert.InRange(page.Statements, 1, 12));
    }

    /// <summary>A page of a long list goes along an index and stops, and so does its count; all else goes to the rows it wants.</summary>
    [Fact]
    [Trait("goal", "P2")]
    public async Task Pages_PlanOfTheDatabase_WalksThroughNoTableThatGrows()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        for (var i = 0; i < 3; i++)
        {
            await ReaderPages.AddSiteAsync(firm, i);
        }

        await using var connection = new SqliteConnection($"Data Source={firm.Options.Database}");
        await connection.OpenAsync();
        var walks = new List<string>();
        foreach (var (page, read) in ReaderPages.OfOne(firm).Concat(ReaderPages.Lists(firm)))
        {
            firm.Counter.Reset();
            Assert.True(await read() is not null, page);
            foreach (var statement in firm.Counter.Texts)
            {
                walks.AddRange((await WalksAsync(connection, statement)).Select(walk => $"{page}: {walk}"));
            }
        }

        Assert.True(walks.Count == 0, string.Join("\n\n", walks));

        // The plan is read aright: a statement that has no index to go by is told.
        Assert.NotEmpty(await WalksAsync(connection, """SELECT "v"."Id" FROM "Visits" AS "v" WHERE "v"."VoidedWhy" = @why"""));
        Assert.NotEmpty(await WalksAsync(connection, """SELECT "v"."Id" FROM "Visits" AS "v" ORDER BY "v"."ReceivedAt" LIMIT 5"""));
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task Count_LongerThanItsLimit_SaysThereAreMoreAndPagesGoOn()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.Store.WriteAsync(ReadingFirm.Supervisor, db =>
        {
            db.Outbox.AddRange(Enumerable.Range(0, ListCount.Most + 2).Select(number => new OutboxRow { Kind = OutboxKinds.Digest, MessageId = $"{number}@quernwath.example", Recipient = "i.wendle@quernwath.example", CreatedAt = ReadingFirm.Start, DueAt = ReadingFirm.Start, About = $"{number}" }));
            return Task.CompletedTask;
        });
        async Task<MailPageOf> PageAsync(int page) => (await new MailQuery(firm.Store).ListAsync(ReadingFirm.Supervisor, onlyOpen: false, page))!;
        var last = (ListCount.Most / MailQuery.PageSize) + 1;

        Assert.Equal((new ListCount(ListCount.Most, IsMore: true), true), ((await PageAsync(1)).Total, (await PageAsync(1)).HasNext));
        Assert.True((await PageAsync(last - 1)).HasNext);
        Assert.Equal((2, false), ((await PageAsync(last)).Messages.Count, (await PageAsync(last)).HasNext));
    }

    private static async Task<IReadOnlyList<(string Page, int Statements)>> CountAllAsync(ReadingFirm firm)
    {
        var counts = new List<(string, int)>();
        foreach (var (page, read) in ReaderPages.OfOne(firm).Concat(ReaderPages.Lists(firm)))
        {
            counts.Add((page, await firm.CountAsync(async () => Assert.True(await read() is not null, page))));
        }

        return counts;
    }

    private static async Task<IReadOnlyList<string>> WalksAsync(SqliteConnection connection, string statement)
    {
        var tables = Aliases().Matches(statement).Select(match => (Table: match.Groups[1].Value, Alias: match.Groups[2].Value)).ToLookup(pair => pair.Alias, pair => pair.Table, StringComparer.Ordinal);
        await using var command = connection.CreateCommand();
        command.CommandText = "EXPLAIN QUERY PLAN " + statement;
        foreach (var name in Parameters().Matches(statement).Select(match => match.Value).Distinct(StringComparer.Ordinal))
        {
            // The plan asks for no value.
            command.Parameters.AddWithValue(name, DBNull.Value);
        }

        var steps = new List<string>();
        await using (var reader = await command.ExecuteReaderAsync())
        {
            while (await reader.ReadAsync())
            {
                steps.Add(reader.GetString(3));
            }
        }

        var stops = statement.Contains("LIMIT", StringComparison.Ordinal) && !steps.Contains("USE TEMP B-TREE FOR ORDER BY");
        var walks = new List<string>();
        foreach (var step in steps.Where(_ => !stops))
        {
            if (Scans().Match(step) is { Success: true } scan && tables[scan.Groups[1].Value].Any(Growing.Contains))
            {
                walks.Add($"{step} ({string.Join(", ", tables[scan.Groups[1].Value])}) in {statement}");
            }
        }

        return walks;
    }

    [GeneratedRegex("\"(\\w+)\" AS \"(\\w+)\"")]
    private static partial Regex Aliases();

    [GeneratedRegex("@\\w+")]
    private static partial Regex Parameters();

    [GeneratedRegex("^SCAN (\\w+)")]
    private static partial Regex Scans();
}
