using LogBook.Web.Hosting;

var builder = WebApplication.CreateBuilder(HostArguments.Complete(args));
var settings = HostSettings.From(builder.Configuration);
builder.AddLogBookWeb(settings);

var app = builder.Build();
app.UseLogBookWeb();
await app.Services.GetRequiredService<HostStart>().RunAsync(app.Lifetime.ApplicationStopping);
await app.RunAsync();

/// <summary>Entry point; public so that tests can start the same host.</summary>
public partial class Program;
