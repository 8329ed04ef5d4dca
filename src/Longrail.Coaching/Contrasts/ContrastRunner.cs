using System.Globalization;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Contrasts;

/// <summary>Plays a scene once for each level of what is varied, everything else byte for byte the same.</summary>
public static class ContrastRunner
{
    /// <summary>The most rows of one comparison.</summary>
    public const int MostRows = 200;

    private const string AimField = "stroke.aim";
    private const string SolvedField = "stroke.aim.solved";

    /// <summary>Makes a comparison. All levels are checked before anything is played; if one of them is wrong nothing
    /// is.</summary>
    /// <param name="request">The question.</param>
    /// <param name="options">Limits of each shot.</param>
    /// <exception cref="ArgumentException">No variation, more than two, or one without levels.</exception>
    public static ContrastAnswer Run(ContrastRequest request, ShotOptions? options = null)
    {
        if (request.Variations.Count is < 1 or > 2 || request.Variations.Any(v => v.Levels.Count == 0))
            throw new ArgumentException(
                "A comparison varies one field or two, each over at least one level.", nameof(request));
        if (CheckQuestion(request) is { } wrong)
            return new ContrastAnswer(null, [wrong]);

        SceneCompilation asked = SceneCompiler.Compile(request.Scene);
        if (asked.Ready is null)
            return new ContrastAnswer(null, asked.Errors, asked.IsUnreachable);

        ReadyScene basis = WithAimFound(asked.Ready);
        var errors = new List<SceneError>();
        bool unreachable = false;
        var variants = new List<(IReadOnlyList<string> Levels, ReadyScene Ready)>();
        foreach (IReadOnlyList<string> levels in Combinations(request.Variations))
        {
            SceneCompilation made = Make(request, basis, levels);
            if (made.Ready is not null)
                variants.Add((levels, made.Ready));
            errors.AddRange(made.Errors);
            unreachable |= made.IsUnreachable;
        }

        // A wrong level stands in several combinations; it is wrong once.
        return errors.Count > 0
            ? new ContrastAnswer(null, [.. errors.Distinct()], unreachable)
            : new ContrastAnswer(Play(request, basis, variants, options), []);
    }

    private static SceneError? CheckQuestion(ContrastRequest request)
    {
        if (request.Variations.Count == 2 && request.Variations[0].Path == request.Variations[1].Path)
            return new SceneError(request.Variations[0].Path, "is varied twice", "all its levels in one list");
        long rows = request.Variations.Aggregate(1L, (product, v) => product * v.Levels.Count);
        if (rows > MostRows)
            return new SceneError("", $"{rows} levels are too many to compare", $"up to {MostRows}");
        if (request.Hold != Hold.Path)
            return null;
        if (request.Scene.Stroke is null)
            return new SceneError("stroke", "there is no stroke to re-aim", "hold stick");
        Variation? aim = request.Variations.FirstOrDefault(v => v.Path.StartsWith(AimField, StringComparison.Ordinal));
        return aim is null
            ? null
            : new SceneError(
                aim.Path, "holding the path undoes every change of the aim", "hold stick, or another field");
    }

    // The stick stays where it is for the base, also when its aim had to be found: it is not found anew for each level.
    private static ReadyScene WithAimFound(ReadyScene asked)
    {
        if (asked.Asked.Stroke?.Aim is not { Angle: null })
            return asked;
        Scene found = Set(asked.Asked, SolvedField, asked.Setup.Stroke!.Stroke.Aim);
        return SceneCompiler.Compile(found).Ready
            ?? throw new InvalidOperationException("A scene was refused with the aim that had been found for it.");
    }

    private static SceneCompilation Make(ContrastRequest request, ReadyScene basis, IReadOnlyList<string> levels)
    {
        Scene scene = basis.Asked;
        for (int k = 0; k < levels.Count; k++)
        {
            SceneReading changed = SceneSetting.With(scene, request.Variations[k].Path, levels[k]);
            if (changed.Scene is null)
                return new SceneCompilation(null, Named(changed.Errors, request.Variations[k].Path, levels[k]));
            scene = changed.Scene;
        }

        SceneCompilation made = SceneCompiler.Compile(scene);
        if (made.Ready is null)
            return made with { Errors = Named(made.Errors, request.Variations[^1].Path, string.Join(", ", levels)) };
        if (!made.Ready.BallIds.SequenceEqual(basis.BallIds))
            return new SceneCompilation(null, [OtherBalls(request, levels)]);
        return request.Hold == Hold.Path ? SceneCompiler.Compile(Reaimed(scene, basis, made.Ready)) : made;
    }

    private static SceneError OtherBalls(ContrastRequest request, IReadOnlyList<string> levels) => new(
        request.Variations[^1].Path, $"level \"{string.Join(", ", levels)}\": puts other balls on the table",
        "a field of one ball, as in balls.9.x");

    // Squirt depends on where the tip strikes, not on where the stick points: one correction is exact.
    private static Scene Reaimed(Scene scene, ReadyScene basis, ReadyScene made)
    {
        StrokeRecord wanted = basis.Setup.Stroke!;
        StrokeRecord found = made.Setup.Stroke!;
        double turn = Math.IEEERemainder(wanted.Result.Velocity.Angle - found.Result.Velocity.Angle, 2 * Math.PI);
        bool isTask = scene.Stroke!.Aim is { Angle: null };
        return Set(scene, isTask ? SolvedField : AimField, found.Stroke.Aim + turn);
    }

    private static Scene Set(Scene scene, string path, double value)
    {
        SceneReading reading = SceneSetting.With(scene, path, value.ToString("R", CultureInfo.InvariantCulture));
        return reading.Scene ?? throw new InvalidOperationException(
            $"A scene refused its own aim: {string.Join("; ", reading.Errors)}");
    }

    private static List<SceneError> Named(IReadOnlyList<SceneError> errors, string path, string level) =>
        errors.Select(e => e with
        {
            Path = e.Path.Length > 0 ? e.Path : path,
            Problem = $"level \"{level}\": {e.Problem}",
        }).ToList();

    private static IEnumerable<IReadOnlyList<string>> Combinations(IReadOnlyList<Variation> variations) =>
        variations.Count == 1
        ? variations[0].Levels.Select(level => (IReadOnlyList<string>)[level])
        : from first in variations[0].Levels
          from second in variations[1].Levels
          select (IReadOnlyList<string>)[first, second];

    private static Contrast Play(
        ContrastRequest request, ReadyScene basis, List<(IReadOnlyList<string> Levels, ReadyScene Ready)> variants,
        ShotOptions? options)
    {
        string[] baseValues = [.. request.Variations.Select(v => FieldText.Of(basis, v.Path))];
        ContrastRow first = Row(
            ContrastRow.BaseLabel,
            [.. request.Variations.Select((v, k) => new VariedValue(v.Path, baseValues[k], false))],
            basis, null, options);
        var rows = new List<ContrastRow> { first };
        foreach ((IReadOnlyList<string> levels, ReadyScene ready) in variants)
        {
            VariedValue[] values =
            [
                .. request.Variations.Select((v, k) =>
                    new VariedValue(v.Path, levels[k], !IsSame(request, basis, k, levels[k]))),
            ];
            // The level at which the scene stands already is the base; it keeps the words in which it was asked for.
            if (values.All(value => !value.IsChanged))
                rows[0] = rows[0] with { Values = values };
            else
                rows.Add(Row(VariantLetter.Of(rows.Count - 1), values, ready, first, options));
        }

        return new Contrast { Request = request, Rows = rows, Names = basis.BallIds, StripeAxes = basis.StripeAxes };
    }

    // A level equals the base if it alone leaves the scene as it is used byte for byte the same.
    private static bool IsSame(ContrastRequest request, ReadyScene basis, int variation, string level)
    {
        SceneReading alone = SceneSetting.With(basis.Asked, request.Variations[variation].Path, level);
        ReadyScene? ready = alone.Scene is null ? null : SceneCompiler.Compile(alone.Scene).Ready;
        return ready is not null
            && SceneWriter.ToUtf8(ready.AsUsed).AsSpan().SequenceEqual(SceneWriter.ToUtf8(basis.AsUsed));
    }

    private static ContrastRow Row(
        string label, IReadOnlyList<VariedValue> values, ReadyScene ready, ContrastRow? basis, ShotOptions? options)
    {
        Trace trace = ShotRunner.Run(ready.Setup, options);
        TraceReadings readings = TraceReadings.Of(trace, ready.StripeAxes);
        BankReading? bank = BankReading.Of(trace, readings);
        return new ContrastRow
        {
            Label = label,
            Values = values,
            Scene = ready.Asked,
            AsUsed = ready.AsUsed,
            Trace = trace,
            Readings = readings,
            Bank = bank,
            Change = basis is null
                ? LandingChange.Between(trace, bank, bank)
                : LandingChange.Between(basis.Trace, basis.Bank, bank),
        };
    }
}
