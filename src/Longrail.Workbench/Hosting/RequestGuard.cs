using System.Net;

namespace Longrail.Workbench.Hosting;

/// <summary>Refuses requests that another site sends through the user's browser: by the name they call us, and by the
/// site they come from.</summary>
/// <remarks>A page elsewhere can make a browser ask 127.0.0.1, directly or by letting its own name point there. Such a
/// request carries that name as its Host, or that site as its Origin.</remarks>
internal sealed class RequestGuard(RequestDelegate next, WorkbenchSettings settings)
{
    /// <summary>Answers one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        HttpRequest request = context.Request;
        if (!IsOurs(request.Host, settings.IsLan))
            return Refuse(context, "This host name is not served here. Open the address printed at the terminal.");
        if (!IsSameOrigin(request))
            return Refuse(context, "Requests from other sites are refused.");
        if (request.ContentLength > WorkbenchHost.LargestBody)
            return Refuse(context, "This is larger than any scene.", StatusCodes.Status413PayloadTooLarge);
        return next(context);
    }

    /// <summary>Whether a Host header names this machine: loopback alone, or with --lan also an address by number and
    /// the machine's own name. A name that someone else controls could be made to point here.</summary>
    public static bool IsOurs(HostString host, bool isLan)
    {
        if (!host.HasValue)
            return false;
        string name = host.Host;
        if (string.Equals(name, "localhost", StringComparison.OrdinalIgnoreCase))
            return true;
        if (IPAddress.TryParse(name.Trim('[', ']'), out IPAddress? address))
            return isLan || IPAddress.IsLoopback(address);
        return isLan && string.Equals(name, Environment.MachineName, StringComparison.OrdinalIgnoreCase);
    }

    // Browsers send Origin with everything but plain reading, and say the site's relation with every request.
    private static bool IsSameOrigin(HttpRequest request)
    {
        string? origin = request.Headers.Origin;
        if (!string.IsNullOrEmpty(origin)
            && !string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        string? site = request.Headers["Sec-Fetch-Site"];
        bool isLink = request.Headers["Sec-Fetch-Mode"] == "navigate" && HttpMethods.IsGet(request.Method);
        return site is not ("cross-site" or "same-site") || isLink;
    }

    private static Task Refuse(HttpContext context, string why, int status = StatusCodes.Status403Forbidden)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(why, context.RequestAborted);
    }
}
