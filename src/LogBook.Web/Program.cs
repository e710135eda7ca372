using LogBook.Web.Hosting;

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = HostArguments.Complete(args), ContentRootPath = PublishedFiles.Folder });
var settings = HostSettings.From(builder.Configuration);
builder.AddLogBookWeb(settings);

var app = builder.Build();
app.UseLogBookWeb();
try
{
    await app.Services.GetRequiredService<HostStart>().RunAsync(app.Lifetime.ApplicationStopping);
}
catch (StartRefusedException refusal)
{
    await Console.Error.WriteLineAsync(refusal.Message);
    return 1;
}

await app.RunAsync();
return 0;

/// <summary>Entry point; public so that tests can start the same host.</summary>
public partial class Program;
