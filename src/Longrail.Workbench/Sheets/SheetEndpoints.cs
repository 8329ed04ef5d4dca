using System.Globalization;
using System.Text;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing;
using Longrail.Drawing.Files;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;
using Longrail.Workbench.Tables;
using Longrail.Workbench.Words;

namespace Longrail.Workbench.Sheets;

/// <summary>Pictures and print sheets as plain answers: the table is in the address, so that a download needs nothing
/// of the page that asked for it.</summary>
internal static class SheetEndpoints
{
    // Two hundred dots an inch on A4.
    private const int PixelsAcross = 2339;

    /// <summary>Adds them to the host.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/picture.{form:regex(^(svg|png|pdf)$)}", PictureAsync);
        app.MapGet("/contrast.{form:regex(^(svg|png|pdf)$)}", ContrastAsync);
        app.MapGet("/sheet", SheetAsync);
    }

    private static async Task<IResult> PictureAsync(
        string form, string? t, string? d, AimQueue queue, CancellationToken cancellationToken)
    {
        (Outcome? outcome, IResult? problem) = await PlayAsync(t, queue, cancellationToken);
        if (outcome is null)
            return problem!;
        return Picture(ShotPicture.Draw(Input(outcome, Date(d))), form, "bank");
    }

    private static async Task<IResult> ContrastAsync(
        string form, string? t, string? f, string? l, string? f2, string? l2, string? h, string? d, AimQueue queue,
        CancellationToken cancellationToken)
    {
        SceneReading reading = SceneLink.Read(t);
        if (reading.Scene is not { } scene)
            return Problem(Words(reading.Errors), StatusCodes.Status400BadRequest);
        Hold hold = h == "path" ? Hold.Path : Hold.Stick;
        ContrastAnswer answer = await queue.RunAsync(
            () => ContrastRequests.Run(scene, f ?? "", l ?? "", f2 ?? "", l2 ?? "", hold), cancellationToken);
        return answer.Contrast is { } contrast
            ? Picture(ContrastPicture.Draw(contrast, contrast.Base.AsUsed.Table?.Preset, Date(d)), form, "contrast")
            : Problem(Words(answer.Errors), StatusCodes.Status400BadRequest);
    }

    private static IResult Picture(string svg, string form, string name)
    {
        try
        {
            return form switch
            {
                "png" => Results.File(SkiaRenderer.Png(svg, PixelsAcross), "image/png", $"{name}.png"),
                "pdf" => Results.File(SkiaRenderer.Pdf(svg), "application/pdf", $"{name}.pdf"),
                _ => Results.File(Encoding.UTF8.GetBytes(svg), "image/svg+xml", $"{name}.svg"),
            };
        }
        catch (PictureException e)
        {
            return Problem(e.Message, StatusCodes.Status500InternalServerError);
        }
    }

    private static async Task<IResult> SheetAsync(
        string? t, string? u, string? d, AimQueue queue, CancellationToken cancellationToken)
    {
        (Outcome? outcome, IResult? problem) = await PlayAsync(t, queue, cancellationToken);
        if (outcome is null)
            return problem!;
        var view = new BenchView();
        view.Restore(u);
        return Results.Content(PrintSheet.Of(Input(outcome, Date(d)), outcome, view), "text/html; charset=utf-8");
    }

    private static async Task<(Outcome? Outcome, IResult? Problem)> PlayAsync(
        string? link, AimQueue queue, CancellationToken cancellationToken)
    {
        SceneReading reading = SceneLink.Read(link);
        if (reading.Scene is null)
            return (null, Problem(Words(reading.Errors), StatusCodes.Status400BadRequest));
        SceneCompilation made = await queue.CompileAsync(reading.Scene, cancellationToken);
        return made.Ready is null
            ? (null, Problem(Words(made.Errors), StatusCodes.Status400BadRequest))
            : (Outcome.Of(made.Ready), null);
    }

    /// <summary>What a picture of an outcome shows.</summary>
    public static ShotPictureInput Input(Outcome outcome, DateOnly? date = null) => new()
    {
        Trace = outcome.Trace,
        Readings = outcome.Readings,
        Names = outcome.Scene.BallIds,
        StripeAxes = outcome.Scene.StripeAxes,
        Title = outcome.Scene.AsUsed.Title ?? "",
        TableName = outcome.Scene.AsUsed.Table?.Preset,
        Date = date,
    };

    private static DateOnly? Date(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None,
            out DateOnly date) ? date : null;

    private static string Words(IReadOnlyList<SceneError> errors) => string.Join("\n", errors.Select(ErrorWords.Of));

    private static IResult Problem(string words, int status) =>
        Results.Text("This table cannot be drawn.\n" + words + "\n", "text/plain", Encoding.UTF8, status);
}
