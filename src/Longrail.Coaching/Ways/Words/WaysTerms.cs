using Longrail.Coaching.Ways.Kisses;

namespace Longrail.Coaching.Ways.Words;

/// <summary>The words of ways files and of the command line.</summary>
public static class WaysTerms
{
    private static readonly string[] _orders = ["plan", "odds", "leeway", "kiss", "speed", "rails"];

    private static readonly string[] _limits =
    [
        "near-jaw", "far-jaw", "double-kiss", "other-ball", "other-cushion", "too-slow", "missed-ball", "miscue",
        "scratch", "not-reached",
    ];

    private static readonly string[] _reasons =
    [
        "cue-ball-blocked", "object-ball-blocked", "too-thin", "runs-out-of-speed", "double-kiss", "scratch",
        "does-not-lead-there",
    ];

    private static readonly string[] _changes = ["cut", "speed", "side", "height", "route"];

    /// <summary>What is changed to get round a double kiss, in the order of <see cref="KissChange"/>.</summary>
    public static IReadOnlyList<string> Changes => _changes;

    /// <summary>The word for what is changed.</summary>
    public static string Of(KissChange change) => _changes[(int)change];

    /// <summary>The orders, in the order of <see cref="WaysOrder"/>.</summary>
    public static IReadOnlyList<string> Orders => _orders;

    /// <summary>What ends a leeway, in the order of <see cref="LeewayLimit"/>.</summary>
    public static IReadOnlyList<string> Limits => _limits;

    /// <summary>Why a route cannot be played, in the order of <see cref="NoWayReason"/>.</summary>
    public static IReadOnlyList<string> Reasons => _reasons;

    /// <summary>The word for an order.</summary>
    public static string Of(WaysOrder order) => _orders[(int)order];

    /// <summary>The word for what ends a leeway.</summary>
    public static string Of(LeewayLimit limit) => _limits[(int)limit];

    /// <summary>The word for a reason.</summary>
    public static string Of(NoWayReason reason) => _reasons[(int)reason];

    /// <summary>The order of that word, or null if there is none.</summary>
    public static WaysOrder? Order(string word)
    {
        int index = Array.IndexOf(_orders, word);
        return index < 0 ? null : (WaysOrder)index;
    }
}
