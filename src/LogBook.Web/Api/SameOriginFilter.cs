namespace LogBook.Web.Api;

/// <summary>
/// Guards calls that ride on a sign-in cookie: the offline form sends JSON without a form's token. A page of another site can make
/// the browser send the cookie, but neither hide where it comes from nor send JSON without asking first.
/// </summary>
public sealed class SameOriginFilter : IEndpointFilter
{
    /// <inheritdoc />
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var http = context.HttpContext;
        if (HttpMethods.IsGet(http.Request.Method) || http.User.Identity?.AuthenticationType == TokenHandler.SchemeName || IsOwn(http.Request))
        {
            return next(context);
        }

        return ValueTask.FromResult<object?>(Problems.Of(StatusCodes.Status403Forbidden, "foreign-origin", "The call does not come from a page of this installation."));
    }

    private static bool IsOwn(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site.Length > 0 && site != "same-origin")
        {
            return false;
        }

        return Uri.TryCreate(request.Headers.Origin.ToString(), UriKind.Absolute, out var origin)
            && string.Equals(origin.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase)
            && string.Equals(origin.Scheme, request.Scheme, StringComparison.OrdinalIgnoreCase);
    }
}
