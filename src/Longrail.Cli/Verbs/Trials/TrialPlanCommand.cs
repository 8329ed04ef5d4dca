using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Text;
using Longrail.Coaching.Trials;
using Longrail.Scenes.Compiling;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>Plans a trial.</summary>
internal sealed class TrialPlanCommand : Command<TrialPlanSettings>
{
    /// <summary>What help says about the verb.</summary>
    public const string Description = "How many shots it takes to see a difference, and what to measure";

    /// <inheritdoc/>
    public override int Execute(CommandContext context, TrialPlanSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        if (PlayerInput.Read(settings.Player, streams) is not { } player) return ExitCode.BadInput;
        ReadyScene? scene = SceneInput.Read(settings.File, streams, out int exitCode);
        if (scene is null) return exitCode;
        TrialPlanAnswer answer = TrialPlanner.Plan(
            new TrialRequest
            {
                Scene = scene.Asked,
                Variation = settings.Variation,
                Hold = settings.Held,
                Player = player,
                Measure = settings.MeasureAsked,
                UsesSpeed = !settings.NoSpeed,
                LandingReading = settings.ReadingMetres,
                SpeedReading = settings.SpeedReadingPart,
                Power = settings.PowerAsked,
                MostShots = settings.Most,
                Looks = settings.Looks,
                Rule = settings.RuleAsked,
                Order = settings.OrderAsked,
                Seed = settings.Seed,
            },
            stop: streams.Interrupted);
        if (answer.Plan is not { } plan)
        {
            SceneInput.PrintErrors(answer.Errors, null, streams.Error);
            return answer.IsUnreachable ? ExitCode.Failed : ExitCode.BadInput;
        }

        streams.Output.Write(settings.Json ? TrialPlanForm.ToUtf8(plan) : Encoding.UTF8.GetBytes(TrialText.Of(plan)));
        streams.Output.Flush();
        return ExitCode.Done;
    }
}
