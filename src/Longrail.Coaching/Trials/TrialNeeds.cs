using Longrail.Coaching.Statistics;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Trials;

/// <summary>How many shots each comparison needs, measured in each way there is.</summary>
internal static class TrialNeeds
{
    internal static IReadOnlyList<TrialNeed> Of(
        TrialRequest request, IReadOnlyList<TrialCondition> conditions, TrialSimulation simulation,
        CushionName? target, PocketName? pocket, bool canUseSpeed)
    {
        // Several comparisons share the false alarms.
        double level = request.Level / (conditions.Count - 1);
        var needs = new List<TrialNeed>();
        for (int k = 1; k < conditions.Count; k++)
        {
            if (target is not null && conditions[0].Landing is not null && conditions[k].Landing is not null)
            {
                needs.Add(Landing(request, conditions, simulation, k, level, usesSpeed: false));
                if (canUseSpeed) needs.Add(Landing(request, conditions, simulation, k, level, usesSpeed: true));
            }

            if (pocket is not null) needs.Add(Makes(request, conditions, k, level));
        }

        return needs;
    }

    private static TrialNeed Landing(
        TrialRequest request, IReadOnlyList<TrialCondition> conditions, TrialSimulation simulation, int k, double level,
        bool usesSpeed)
    {
        double first = conditions[0].Spread!.Value;
        double other = conditions[k].Spread!.Value;
        double spread = Math.Sqrt((first * first + other * other) / 2);
        double effect = simulation.Effect(k, 0);
        double? explained = usesSpeed ? simulation.ExplainedBySpeed(k, 0) : null;
        int shots = double.IsNaN(effect)
            ? ShotsNeeded.Most
            : ShotsNeeded.ForMeans(effect / spread, request.Power, level, explained);
        // Some shots give no landing: they are played in addition.
        double kept = 1 - (conditions[0].Lost + conditions[k].Lost) / 2;
        shots = shots < ShotsNeeded.Most ? (int)Math.Ceiling(shots / Math.Max(kept, 0.01)) : shots;
        int most = Math.Max(3, (int)(request.MostShots * kept));
        return new TrialNeed(
            conditions[k].Label, TrialMeasure.Landing, usesSpeed, effect, spread * Math.Sqrt(1 - (explained ?? 0)),
            Math.Max(shots, TrialPlanner.FewestLandings),
            spread * ShotsNeeded.ShiftSeen(most, request.Power, level, explained));
    }

    private static TrialNeed Makes(
        TrialRequest request, IReadOnlyList<TrialCondition> conditions, int k, double level)
    {
        double first = conditions[0].Made!.Value.Share;
        double other = conditions[k].Made!.Value.Share;
        double shots =
            Math.Min(ShotsNeeded.Most, Math.Ceiling(ShotsNeeded.ForChances(first, other, request.Power, level)));
        return new TrialNeed(
            conditions[k].Label, TrialMeasure.Made, false, other - first, null,
            Math.Max((int)shots, TrialPlanner.FewestMakes), null);
    }
}
