using System.Text;
using Longrail.Coaching.Players;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Search;
using Longrail.Physics.Equipment;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Coaching.Tests.Ways;

/// <summary>Questions, and a search that answers them at once, so that the run itself is tested.</summary>
internal static class WaysQuestions
{
    internal const string ThreeBalls = """
        {
          "title": "Three balls",
          "table": { "preset": "pool-9ft" },
          "balls": [
            { "id": "cue", "along": 1.6, "across": 2.2 },
            { "id": "9", "along": 2.6, "across": 1 },
            { "id": "8", "along": 6, "across": 3 }
          ]
        }
        """;

    internal static ReadyScene Layout(string scene)
    {
        SceneCompilation compilation = SceneReader.ReadLayout(Encoding.UTF8.GetBytes(scene));
        Assert.True(compilation.Ready is not null, string.Join("; ", compilation.Errors));
        return compilation.Ready;
    }

    internal static WaysRequest Ask(string scene = ThreeBalls, string ball = "9", string? next = null) => new()
    {
        Scene = Layout(scene),
        Ball = ball,
        NextBall = next,
        Player = PlayerPresets.Default,
        Threads = 2,
    };

    // Solving takes longer than all the rest of a run; the layout is always the same.
    private static readonly Lazy<IReadOnlyList<FoundWay>> _twoBanks = new(() => TwoBanks(WaysQuestion.Of(Ask())));

    private static IReadOnlyList<FoundWay> TwoBanks(WaysQuestion question)
    {
        WayRoute side = FoundWays.Bank(PocketName.LeftSide, CushionName.Right);
        WayRoute corner = FoundWays.Bank(PocketName.FootLeft, CushionName.Right);
        return
        [
            FoundWays.Of(
                side, FoundWays.BankStroke(question.Setup, side, 2.5), FoundWays.BankStroke(question.Setup, side, 3.2)),
            FoundWays.Of(corner, FoundWays.BankStroke(question.Setup, corner, 2.5)),
        ];
    }

    /// <summary>Parts of a run whose search finds two banks, and one route that cannot be played.</summary>
    internal static WaysParts Parts(Func<CancellationToken, bool>? goesOn = null) => WaysParts.Usual with
    {
        Search = (_, found, progress, stop) =>
        {
            IReadOnlyList<FoundWay> ways = _twoBanks.Value;
            found(ways[0]);
            progress.Report(0.5);
            if (goesOn is not null && !goesOn(stop))
                return new WaySearchResult([ways[0]], [], true, 10);
            found(ways[1]);
            progress.Report(1);
            NoWay no = new(FoundWays.Pot(PocketName.FootLeft), NoWayReason.ObjectBallBlocked, "8");
            return new WaySearchResult(ways, [no], false, 20);
        },
    };

    /// <summary>Progress that is kept.</summary>
    internal sealed class Kept : IProgress<WaysProgress>
    {
        public List<WaysProgress> Reports { get; } = [];

        public void Report(WaysProgress value) => Reports.Add(value);
    }
}
