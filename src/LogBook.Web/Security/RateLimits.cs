using System.Threading.RateLimiting;

namespace LogBook.Web.Security;

/// <summary>How often one address may try. Lockout guards one account; this guards many accounts against one address.</summary>
public static class RateLimits
{
    /// <summary>Policy of forms that take a secret: sign-in, first run.</summary>
    public const string Secrets = "secrets";

    /// <summary>Tries with a secret per address and minute.</summary>
    public const int SecretsPerMinute = 20;

    /// <summary>Requests per address and ten seconds; a page with all its files takes about thirty.</summary>
    public const int RequestsPerTenSeconds = 1_000;

    /// <summary>Adds the limits.</summary>
    public static IServiceCollection AddLimits(this IServiceCollection services) => services.AddRateLimiter(limiter =>
    {
        limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        limiter.OnRejected = static (context, _) =>
        {
            context.HttpContext.Response.Headers.RetryAfter = "60";
            return ValueTask.CompletedTask;
        };
        limiter.AddPolicy(Secrets, static context => HttpMethods.IsPost(context.Request.Method)
            ? RateLimitPartition.GetFixedWindowLimiter(Address(context), static _ => new FixedWindowRateLimiterOptions
            {
                PermitLimit = SecretsPerMinute,
                Window = TimeSpan.FromMinutes(1),
            })
            : RateLimitPartition.GetNoLimiter("reading"));
        limiter.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(static context =>
            RateLimitPartition.GetFixedWindowLimiter(Address(context), static _ => new FixedWindowRateLimiterOptions
            {
                PermitLimit = RequestsPerTenSeconds,
                Window = TimeSpan.FromSeconds(10),
            }));
    });

    // An IPv6 customer holds a whole /64; one of its addresses is not one sender.
    private static string Address(HttpContext context)
    {
        var address = context.Connection.RemoteIpAddress;
        if (address is null)
        {
            return "none";
        }

        if (address.IsIPv4MappedToIPv6)
        {
            address = address.MapToIPv4();
        }

        return address.AddressFamily == System.Net.Sockets.AddressFamily.InterNetworkV6
            ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8))
            : address.ToString();
    }
}
