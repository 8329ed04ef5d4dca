using Longrail.Coaching.Effects.Stages;
using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Parts;

namespace Longrail.Coaching.Effects;

/// <summary>Splits a shot's way off the plain mirror bank into causes.</summary>
public static class EffectsRunner
{
    /// <summary>Makes the effect budget of a scene. A pure function.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="options">What to split; null for the defaults.</param>
    /// <param name="stop">Ends the work early.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number of cushions below 1 or above
    /// <see cref="EffectsOptions.MostCushions"/>.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static EffectsAnswer Run(ReadyScene scene, EffectsOptions? options = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(scene);
        options ??= new EffectsOptions();
        if (options.Cushions is < 1 or > EffectsOptions.MostCushions)
            throw new ArgumentOutOfRangeException(nameof(options), options.Cushions, "Count one to three cushions.");
        Trace trace = ShotRunner.Run(scene.Setup);
        if (FindBall(scene, trace, options.Ball, out SceneError? wrong) is not { } ball)
            return new EffectsAnswer(null, [wrong!], wrong!.Path.Length == 0);

        SceneAim? aim = scene.Asked.Stroke?.Aim;
        bool aimed = aim?.Bank is { } bank && bank == scene.BallIds[ball];
        ShotChain? chain = ChainFinder.Find(
            trace, scene.BallIds, ball, options.Cushions, aimed ? aim!.Off?.Count ?? 0 : 0, out string problem);
        if (chain is null)
            return None(problem);
        var staged = new StagedShot(chain);
        return TargetFinder.Of(chain, staged, aimed ? aim!.To : null) is { } target
            ? Split(scene, chain, staged, target, stop)
            : None($"ball {scene.BallIds[ball]} goes to no other cushion after its last one, so there is no place to "
                + "compare");
    }

    private static EffectsAnswer None(string problem) => new(null, [new SceneError("", problem)], true);

    private static int? FindBall(ReadyScene scene, Trace trace, string? wanted, out SceneError? wrong)
    {
        wrong = null;
        if (wanted is not null)
        {
            int index = scene.IndexOf(wanted);
            if (index >= 0)
                return index;
            wrong = new SceneError("ball", $"there is no ball \"{wanted}\"", string.Join(", ", scene.BallIds));
            return null;
        }

        ShotReading shot = TraceReadings.Of(trace).Shot;
        if (shot.StruckBall is not { } struck)
        {
            wrong = new SceneError("", "nothing is struck or launched, so no ball moves");
            return null;
        }

        // A ball that comes to a cushion before it hits anything is kicked or alone: it is what was aimed.
        ShotEvent? first = trace.Events.FirstOrDefault(
            e => (e.BallA == struck || e.BallB == struck)
                && e.Kind is ShotEventKind.BallsMeet or ShotEventKind.Cushion or ShotEventKind.Jaw);
        return first?.Kind == ShotEventKind.BallsMeet ? shot.FirstBallHit ?? struck : struck;
    }

    private static EffectsAnswer Split(
        ReadyScene scene, ShotChain chain, StagedShot staged, EffectTarget target, CancellationToken stop)
    {
        StraightLine line = TargetFinder.LineOf(target);
        SwitchGame? game = SwitchGame.Of(staged, chain, target, stop);
        if (game is null)
        {
            string name = scene.BallIds[chain.Ball];
            return None($"ball {name} comes to its target only with the help of a second hit, a jaw or another ball; "
                + "the parts of such a way cannot be told apart");
        }

        ShotBall ball = chain.Trace.Setup.Balls[chain.Ball];
        EquipmentSpec equipment = chain.Trace.Setup.Equipment;
        var way = new FreeWay(ball.Radius, equipment.Cloth, equipment.Table.Gravity);
        BallState leaves = TargetFinder.Leaving(chain);
        if (way.Arrival(line, leaves) is not { } arrival)
            return None($"ball {scene.BallIds[chain.Ball]} does not go on to its target");
        var budget = new EffectBudget
        {
            AsUsed = scene.AsUsed,
            Names = scene.BallIds,
            Trace = chain.Trace,
            Ball = chain.Ball,
            Striker = chain.Striker,
            Cushions = [.. chain.Cushions.Select(cushion => cushion.Name)],
            LastContact = chain.LastContact,
            Target = target,
            MirrorPlace = game.MirrorPlace,
            ModelPlace = game.ModelPlace,
            Place = target.PlaceOf(arrival),
            Effects = game.Shares(),
            AlwaysOn = game.AlwaysOn,
            MirrorPath = staged.Path(game.Baseline, line)!,
            Notes = [],
        };
        return new EffectsAnswer(budget with { Notes = EffectNotes.Of(budget, chain) }, []);
    }
}
