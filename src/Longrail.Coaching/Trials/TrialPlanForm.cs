using System.Text.Json;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Scenes;
using Longrail.Scenes.Trials;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Trials;

/// <summary>Plans as files and back, format "trial-plan/1".</summary>
public static class TrialPlanForm
{
    /// <summary>A plan as text, indented for people.</summary>
    public static byte[] ToUtf8(TrialPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        using var scene = JsonDocument.Parse(SceneWriter.ToUtf8(plan.Scene));
        return TrialPlanFileForm.ToUtf8(new TrialPlanFile
        {
            Longrail = TrialPlanFile.Format,
            Title = plan.Title,
            Varied = plan.Path,
            Hold = plan.Hold == Hold.Path ? "path" : "stick",
            Measure = TrialWords.Of(plan.Measure),
            UsesSpeed = plan.UsesSpeed,
            Shots = plan.Shots,
            Looks = plan.Looks,
            Rule = TrialWords.Of(plan.Rule),
            Order = TrialWords.Of(plan.Order),
            Seed = plan.Seed,
            Power = plan.Power,
            Level = plan.Level,
            MostShots = plan.MostShots,
            Ball = plan.Ball,
            Target = plan.Target is { } target ? TableWords.Of(target) : null,
            Diamond = plan.Diamond,
            Pocket = plan.Pocket is { } pocket ? TableWords.Of(pocket) : null,
            LandingReading = plan.LandingReading,
            SpeedReading = plan.SpeedReading,
            Player = new TrialPlanPlayer(
                plan.Player.Name, plan.Player.Aim, plan.Player.Speed, plan.Player.TipAcross, plan.Player.TipUp,
                plan.Player.Elevation),
            Conditions =
            [
                .. plan.Conditions.Select(c => new TrialPlanCondition(
                    c.Label, c.Value, c.Landing, c.Spread, c.Lost, c.Made?.Made, c.Made?.Trials)),
            ],
            Needs =
            [
                .. plan.Needs.Select(n => new TrialPlanNeed(
                    n.Condition, TrialWords.Of(n.Measure), n.UsesSpeed, n.Effect, n.Spread, n.Shots, n.SeenWithMost)),
            ],
            Advice = plan.Advice,
            Scene = scene.RootElement,
        });
    }

    /// <summary>Reads a plan. Nothing in it makes this throw.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static TrialPlanAnswer Read(ReadOnlySpan<byte> utf8)
    {
        TrialPlanFileReading reading = TrialPlanFileForm.Read(utf8);
        return new TrialPlanAnswer(
            reading.Plan is { } file ? Of(file, reading.Scene!) : null, reading.Errors);
    }

    private static TrialPlan Of(TrialPlanFile file, Scene scene) => new()
    {
        Scene = scene,
        Path = file.Varied,
        Hold = file.Hold == "path" ? Hold.Path : Hold.Stick,
        Conditions =
        [
            .. file.Conditions.Select(c => new TrialCondition(
                c.Label, c.Value, c.Landing, c.Spread, c.Lost, MadeOf(c))),
        ],
        Ball = file.Ball,
        Target = file.Target is { } target ? TableWords.Cushion(target) : null,
        Diamond = file.Diamond,
        Pocket = file.Pocket is { } pocket ? TableWords.Pocket(pocket) : null,
        Player = PlayerPresets.Default with
        {
            Name = file.Player.Name,
            Aim = file.Player.Aim,
            Speed = file.Player.Speed,
            TipAcross = file.Player.TipAcross,
            TipUp = file.Player.TipUp,
            Elevation = file.Player.Elevation,
        },
        LandingReading = file.LandingReading,
        SpeedReading = file.SpeedReading,
        Power = file.Power,
        Level = file.Level,
        MostShots = file.MostShots,
        Needs =
        [
            .. file.Needs.Select(n => new TrialNeed(
                n.Condition, TrialWords.Measure(n.Measure), n.UsesSpeed, n.Effect, n.Spread, n.Shots, n.SeenWithMost)),
        ],
        Measure = TrialWords.Measure(file.Measure),
        UsesSpeed = file.UsesSpeed,
        Looks = file.Looks,
        Rule = file.Rule == TrialWords.Of(StoppingRule.Pocock) ? StoppingRule.Pocock : StoppingRule.OBrienFleming,
        Order = file.Order == TrialWords.Of(TrialOrder.Blocks) ? TrialOrder.Blocks : TrialOrder.Abba,
        Seed = file.Seed,
        Advice = file.Advice,
    };

    private static Odds? MadeOf(TrialPlanCondition condition) =>
        condition is { Made: { } made, Strokes: { } strokes } && made >= 0 && made <= strokes
            ? Odds.Of(made, strokes)
            : null;
}
