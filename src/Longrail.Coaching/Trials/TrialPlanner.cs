using Longrail.Coaching.Contrasts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;

namespace Longrail.Coaching.Trials;

/// <summary>Plans a trial: the difference that the physics expects, the player's scatter, hence how many
/// shots.</summary>
public static class TrialPlanner
{
    /// <summary>The fewest shots of each condition, however large the difference: below twenty shots in all no verdict
    /// is given. Makes need that many of each.</summary>
    public const int FewestLandings = 10;

    /// <summary>The same for makes and misses.</summary>
    public const int FewestMakes = 20;

    private const string SpeedField = "stroke.speed";
    private const string CueSpeedField = "stroke.cueSpeed";

    /// <summary>Plans a trial.</summary>
    /// <param name="request">The question.</param>
    /// <param name="progress">Told the part that is done, from 0 to 1; may be null.</param>
    /// <param name="stop">Ends it early.</param>
    /// <exception cref="ArgumentException">A number of the request is out of its range.</exception>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static TrialPlanAnswer Plan(
        TrialRequest request, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        Require(request);
        if (request.Scene.Stroke is null)
            return Wrong(new SceneError("stroke", "there is no stroke, so there is no player to plan for", "a stroke"));
        ContrastAnswer contrast = ContrastRunner.Run(
            new ContrastRequest(request.Scene, [request.Variation], request.Hold));
        if (contrast.Contrast is not { } expected)
            return new TrialPlanAnswer(null, contrast.Errors, contrast.IsUnreachable);
        if (RowsOf(request.Variation, expected) is not { } rows)
            return Wrong(new SceneError(
                request.Variation.Path, "fewer than two different conditions", "two levels or more, none twice"));
        if (rows[0].Bank is not { } bank)
            return Wrong(new SceneError(
                "", "no ball touches a cushion, so there is no bank to measure", "a scene with a bank"), true);

        CushionName? target = rows.All(row => row.Bank?.Target == bank.Target) ? bank.Target : null;
        PocketName? pocket = request.Scene.Stroke.Aim?.To ?? bank.Pocket;
        if (target is null && pocket is null)
            return Wrong(new SceneError(
                "", "the conditions land on different cushions, and no pocket is played for: nothing can be compared",
                "a shot that reaches one cushion in all conditions"), true);
        TrialSimulation simulation = Simulate(request, rows, target, pocket, progress, stop);
        return new TrialPlanAnswer(Assemble(request, expected, rows, target, pocket, simulation), []);
    }

    private static TrialPlanAnswer Wrong(SceneError error, bool unreachable = false) => new(null, [error], unreachable);

    private static void Require(TrialRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        bool isInRange = request.LandingReading > 0 && request.SpeedReading >= 0
            && request is { Power: >= 0.5 and < 1, Level: > 0 and < 0.5, MostShots: > 0 }
            && request is { Looks: >= 1 and <= 10, Strokes: >= 100 };
        if (!isInRange) throw new ArgumentException("A number of the request is out of its range.", nameof(request));
    }

    // The base is a condition if its level was asked for, or if only one other was.
    private static ContrastRow[]? RowsOf(Variation variation, Contrast expected)
    {
        ContrastRow[] rows = variation.Levels.Count == 1
            ? [.. expected.Rows]
            : [.. variation.Levels.Select(level => expected.Rows.First(row => row.Values[0].Text == level))];
        return rows.Length >= 2 && rows.Distinct().Count() == rows.Length ? rows : null;
    }

    private static TrialSimulation Simulate(
        TrialRequest request, ContrastRow[] rows, CushionName? target, PocketName? pocket, IProgress<double>? progress,
        CancellationToken stop)
    {
        var strokes = new TrialStrokes(request, target, pocket);
        int played = 0;
        int all = rows.Length * request.Strokes;
        SimulatedShot[][] shots =
        [
            .. rows.Select(row => strokes.Play(SceneCompiler.Compile(row.Scene).Ready!, Tell, stop)),
        ];
        return new TrialSimulation(shots, request.LandingReading);

        void Tell()
        {
            int now = Interlocked.Increment(ref played);
            if (now % 100 == 0) progress?.Report((double)now / all);
        }
    }

    private static TrialPlan Assemble(
        TrialRequest request, Contrast expected, ContrastRow[] rows, CushionName? target, PocketName? pocket,
        TrialSimulation simulation)
    {
        TrialCondition[] conditions =
        [
            .. rows.Select((row, k) => new TrialCondition(
                VariantLetter.Of(k), row.Values[0].Text, simulation.Landing(k)?.Mean, simulation.Landing(k)?.Spread,
                simulation.Lost(k), pocket is null ? null : simulation.Made(k))),
        ];
        bool canUseSpeed = request.UsesSpeed && request.Variation.Path is not (SpeedField or CueSpeedField);
        IReadOnlyList<TrialNeed> needs = TrialNeeds.Of(request, conditions, simulation, target, pocket, canUseSpeed);
        (TrialMeasure measure, bool usesSpeed) = Choose(request, needs, canUseSpeed);
        TableSpec table = rows[0].Trace.Setup.Equipment.Table;
        var plan = new TrialPlan
        {
            Scene = request.Scene,
            Path = request.Variation.Path,
            Hold = request.Hold,
            Conditions = conditions,
            Ball = expected.Names[rows[0].Bank!.Ball],
            Target = target,
            Diamond = target is { } cushion ? Diamonds.Length(cushion, table) : null,
            Pocket = pocket,
            Player = request.Player,
            LandingReading = request.LandingReading,
            SpeedReading = request.SpeedReading,
            Power = request.Power,
            Level = request.Level,
            MostShots = request.MostShots,
            Needs = needs,
            Measure = measure,
            UsesSpeed = usesSpeed,
            Looks = TrialLooks.Of(request, needs, measure, usesSpeed),
            Rule = request.Rule,
            Order = request.Order,
            Seed = request.Seed,
            Advice = [],
        };
        return plan with { Advice = TrialAdvice.Of(plan, rows) };
    }

    // What needs fewest shots for the comparison that needs most. Speeds cost little and guard against a condition that
    // was played harder, so they are preferred where they save nothing.
    private static (TrialMeasure Measure, bool UsesSpeed) Choose(
        TrialRequest request, IReadOnlyList<TrialNeed> needs, bool canUseSpeed)
    {
        var best = needs
            .Where(need => request.Measure is null || need.Measure == request.Measure)
            .GroupBy(need => (need.Measure, need.UsesSpeed))
            .OrderBy(group => group.Max(need => need.Shots))
            .ThenByDescending(group => group.Key.UsesSpeed)
            .FirstOrDefault();
        return best?.Key ?? (request.Measure ?? TrialMeasure.Landing, canUseSpeed);
    }
}
