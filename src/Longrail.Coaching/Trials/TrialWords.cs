using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>The words by which files and the command line name what a trial is made of.</summary>
public static class TrialWords
{
    /// <summary>"landing" or "made".</summary>
    public static string Of(TrialMeasure measure) => measure == TrialMeasure.Made ? "made" : "landing";

    /// <summary>The measure of that word.</summary>
    public static TrialMeasure Measure(string word) => word == "made" ? TrialMeasure.Made : TrialMeasure.Landing;

    /// <summary>"abba" or "blocks".</summary>
    public static string Of(TrialOrder order) => order == TrialOrder.Blocks ? "blocks" : "abba";

    /// <summary>"obrien-fleming" or "pocock".</summary>
    public static string Of(StoppingRule rule) => rule == StoppingRule.Pocock ? "pocock" : "obrien-fleming";
}
