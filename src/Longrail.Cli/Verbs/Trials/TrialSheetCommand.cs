using System.Text;
using Longrail.Cli.Text;
using Longrail.Coaching.Trials;
using Longrail.Drawing;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>Prints the order of a trial, and the table to fill in.</summary>
internal sealed class TrialSheetCommand : Command<TrialSheetSettings>
{
    /// <summary>What help says about the verb.</summary>
    public const string Description =
        "The sheet for the table: set-up in diamonds and mm, the order drawn by lot, boxes";

    /// <inheritdoc/>
    public override int Execute(
        CommandContext context, TrialSheetSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        if (settings.Picture is { } wanted && PictureOutput.Refusal(wanted) is { } refusal)
        {
            streams.Error.WriteLine($"longrail: --picture: {refusal}");
            return ExitCode.BadInput;
        }

        if (TrialPlanInput.Read(settings.Plan, streams) is not { } plan) return ExitCode.BadInput;
        if (!plan.IsAffordable)
        {
            streams.Error.WriteLine(
                "longrail: the plan found no affordable number of shots; there is nothing to print");
            return ExitCode.Failed;
        }

        if (settings.Picture is { } picture
            && PictureOutput.WritePages(TrialSheetPicture.Draw(plan, settings.PaperAsked), picture) is { } failure)
        {
            streams.Error.WriteLine($"longrail: --picture: {failure}");
            return ExitCode.Failed;
        }

        if (settings.Results is { } results && WriteNew(results, TrialTemplate.Of(plan)) is { } problem)
        {
            streams.Error.WriteLine($"longrail: --results: {problem}");
            return ExitCode.Failed;
        }

        streams.Output.Write(Encoding.UTF8.GetBytes(TrialText.OrderOf(plan)));
        streams.Output.Flush();
        return ExitCode.Done;
    }

    // Results that someone has filled in are never written over.
    private static string? WriteNew(string path, string text)
    {
        try
        {
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(Encoding.UTF8.GetBytes(text));
            return null;
        }
        catch (Exception e) when (
            e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return File.Exists(path)
                ? $"{path} is there already; it is left as it is"
                : $"cannot write {path}: {e.Message}";
        }
    }
}
