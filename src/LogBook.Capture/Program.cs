using LogBook.Capture.Summaries;
using LogBook.Capture.Visits;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.Services.AddScoped<SummaryPdf>();
builder.RootComponents.RegisterForJavaScript<ClosedVisit>("logbook-closed");
builder.RootComponents.RegisterForJavaScript<Rehearsal>("logbook-rehearsal");

// The page hears of the last one, and by that of all.
builder.RootComponents.RegisterForJavaScript<VisitOnDevice>("logbook-visit", "logbookFormIsReady");
await builder.Build().RunAsync();
