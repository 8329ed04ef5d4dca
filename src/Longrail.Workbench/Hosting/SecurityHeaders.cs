namespace Longrail.Workbench.Hosting;

/// <summary>Puts the headers on every answer that keep a page to itself: nothing from elsewhere, no script or style but
/// our own files, no frame around it.</summary>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    /// <summary>The content policy. No 'unsafe-inline' and no 'unsafe-eval' anywhere: pictures are SVG elements whose
    /// looks are attributes, not styles.</summary>
    public const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Answers one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), interest-cohort=()";
        return next(context);
    }
}
