using LogBook.Application.Sites;

namespace LogBook.Web.Hosting;

/// <summary>Readies the demo.</summary>
public sealed class DemoStart(SetUpStore setUp)
{
    /// <summary>Makes the firm where it is missing.</summary>
    public Task RunAsync(CancellationToken cancellationToken) => setUp.FirmRowAsync(LogBook.Application.Data.Viewer.System("demo"), cancellationToken);
}
