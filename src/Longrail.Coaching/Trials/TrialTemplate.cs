using System.Globalization;
using System.Text;

namespace Longrail.Coaching.Trials;

/// <summary>The table into which a trial's results are written: one row for each shot in the order of the sheet, the
/// measured cells empty.</summary>
public static class TrialTemplate
{
    /// <summary>The table as text, with commas between the cells (RFC 4180, with plain line breaks).</summary>
    public static string Of(TrialPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string[] measured = [.. Measured(plan)];
        var text = new StringBuilder();
        text.Append("shot,condition,").AppendJoin(',', measured).Append(",note\n");
        string empty = new(',', measured.Length + 1);
        foreach (TrialTurn turn in TrialSchedule.Of(plan))
        {
            text.Append(turn.Shot.ToString(CultureInfo.InvariantCulture)).Append(',')
                .Append(plan.Conditions[turn.Condition].Label).Append(empty).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<string> Measured(TrialPlan plan)
    {
        if (plan.Target is not null) yield return "landing_mm";
        yield return "speed_mps";
        if (plan.Pocket is not null) yield return "made";
    }
}
