using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Domain.Sites;
using LogBook.Testing;
using LogBook.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>A data folder for a host that runs as a process of its own.</summary>
public static class SampleFolder
{
    /// <summary>Code of one of the sites that <see cref="MakeAsync"/> adds.</summary>
    public static string Site(int i) => string.Create(CultureInfo.InvariantCulture, $"YAF-{i + 100}");

    /// <summary>Makes the sample firm with more sites, each with a system of its own, and the technician's account.</summary>
    /// <param name="sites">How many more.</param>
    /// <returns>The folder, which nobody else deletes.</returns>
    public static async Task<string> MakeAsync(int sites)
    {
        await using var app = new LogBookWebApp { KeepsFolder = true };
        await app.AddFirmAsync();
        await using var sample = SampleFirm.SetUp();
        var setUp = (await JsonNode.ParseAsync(sample))!.AsObject();
        var (rows, systems) = (setUp["sites"]!.AsArray(), setUp["systems"]!.AsArray());
        var (site, system) = (rows[0]!, systems[0]!);
        for (var i = 0; i < sites; i++)
        {
            var (copy, itsSystem) = (site.DeepClone(), system.DeepClone());
            copy["code"] = Site(i);
            itsSystem["site"] = Site(i);
            rows.Add(copy);
            systems.Add(itsSystem);
        }

        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(setUp.ToJsonString()));
        Assert.DoesNotContain((await app.Services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), json)).Issues, issue => issue.Blocks);
        await app.AddUserAsync(JobHost.Technician, PersonRole.Technician, person: "RYA");
        return app.Folder;
    }
}
