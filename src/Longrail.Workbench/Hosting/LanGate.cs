using System.Net;
using Microsoft.AspNetCore.Antiforgery;

namespace Longrail.Workbench.Hosting;

/// <summary>With --lan lets nobody in without the code, not even from this machine.</summary>
internal sealed class LanGate(RequestDelegate next, LanCode code)
{
    private const string Door = "/code";
    private const string Cookie = "longrail-pass";

    /// <summary>Answers one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        bool isDoor = context.Request.Path.StartsWithSegments(Door, StringComparison.Ordinal)
            || context.Request.Path == "/sheet.css";
        if (!code.IsAsked || isDoor || code.IsPass(context.Request.Cookies[Cookie]))
            return next(context);
        if (!HttpMethods.IsGet(context.Request.Method) || context.WebSockets.IsWebSocketRequest
            || context.Request.Path.StartsWithSegments("/_blazor", StringComparison.Ordinal))
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            return Task.CompletedTask;
        }

        context.Response.Redirect(Door);
        return Task.CompletedTask;
    }

    /// <summary>The page that asks for the code.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet(Door, (HttpContext context, IAntiforgery antiforgery) => Page(context, antiforgery, ""));
        app.MapPost(Door, async (HttpContext context, IAntiforgery antiforgery, LanCode code) =>
        {
            if (!await antiforgery.IsRequestValidAsync(context))
                return Page(context, antiforgery, "This form is too old. Type the code again.");
            IFormCollection form = await context.Request.ReadFormAsync();
            if (code.Try(form["code"], DateTime.UtcNow) is not { } pass)
                return Page(context, antiforgery, "This is not the code, or there were too many tries in a minute.");
            context.Response.Cookies.Append(Cookie, pass, new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                IsEssential = true,
            });
            return Results.Redirect("/");
        });
    }

    private static IResult Page(HttpContext context, IAntiforgery antiforgery, string problem)
    {
        AntiforgeryTokenSet token = antiforgery.GetAndStoreTokens(context);
        string said = problem.Length == 0 ? "" : $"<p role=\"alert\">{WebUtility.HtmlEncode(problem)}</p>";
        return Results.Content(
            $"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
            <title>Longrail workbench: code</title><link rel="stylesheet" href="/sheet.css"></head>
            <body class="door"><main><h1>Longrail workbench</h1>{said}
            <form method="post" action="{Door}"><label for="code">The code printed at the terminal</label>
            <input id="code" name="code" autocomplete="one-time-code" maxlength="20" required autofocus>
            <input type="hidden" name="{token.FormFieldName}" value="{token.RequestToken}">
            <button type="submit">Open</button></form></main></body></html>
            """,
            "text/html; charset=utf-8",
            statusCode: problem.Length == 0 ? StatusCodes.Status200OK : StatusCodes.Status403Forbidden);
    }
}
