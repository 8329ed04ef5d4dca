using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Text;
using Longrail.Coaching.Trials;
using Longrail.Drawing;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>Weighs the results of a trial.</summary>
internal sealed class TrialWeighCommand : Command<TrialWeighSettings>
{
    /// <summary>What help says about the verb.</summary>
    public const string Description =
        "What the results say: differences with intervals, speed evened out, one sentence";

    /// <inheritdoc/>
    public override int Execute(
        CommandContext context, TrialWeighSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        if (settings.Picture is { } wanted && PictureOutput.Refusal(wanted) is { } refusal)
        {
            streams.Error.WriteLine($"longrail: --picture: {refusal}");
            return ExitCode.BadInput;
        }

        TrialPlan? plan = null;
        if (settings.Plan is { } file)
        {
            plan = TrialPlanInput.Read(file, streams);
            if (plan is null) return ExitCode.BadInput;
        }

        if (!SceneInput.TryReadBytes(settings.Results, streams, out byte[] utf8, "a table of results"))
            return ExitCode.BadInput;
        TrialResultAnswer answer = TrialWeigher.Weigh(utf8, plan);
        if (answer.Result is not { } result)
        {
            SceneInput.PrintErrors(answer.Errors, SceneInput.NameOf(settings.Results), streams.Error);
            if (answer.Refusal is { } reason) streams.Error.WriteLine($"longrail: not weighed: {reason}");
            return answer.Refusal is null ? ExitCode.BadInput : ExitCode.Failed;
        }

        if (settings.Picture is { } picture
            && PictureOutput.Write(TrialResultPicture.Draw(result), picture) is { } failure)
        {
            streams.Error.WriteLine($"longrail: --picture: {failure}");
            return ExitCode.Failed;
        }

        streams.Output.Write(
            settings.Json ? TrialResultWriter.ToUtf8(result) : Encoding.UTF8.GetBytes(TrialText.Of(result)));
        streams.Output.Flush();
        return ExitCode.Done;
    }
}
