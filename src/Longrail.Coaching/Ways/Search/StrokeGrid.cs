using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>The speeds and tip positions at which every aim is looked at.</summary>
internal sealed class StrokeGrid
{
    /// <summary>Slowest and fastest, m/s: a lag that dies half way down the table, and as hard as a bank is
    /// played.</summary>
    private const double Slowest = 0.7;

    private const double Fastest = 6.0;
    private const int SpeedCount = 7;
    private const int FirstDiagonal = 5;

    /// <summary>Distances of the tip positions from the centre over the miscue limit. From speed to speed the axes and
    /// the diagonals change places, so that a region between the positions of one speed lies on those of the
    /// next.</summary>
    private const double Inner = 0.45;

    private const double Outer = 0.8;

    /// <summary>The centre, and eight places about it: right, left, above, below, then the diagonals.</summary>
    private static readonly (double Right, double Above)[] _places =
    [
        (0, 0), (1, 0), (-1, 0), (0, 1), (0, -1),
        (Math.Sqrt(0.5), Math.Sqrt(0.5)), (-Math.Sqrt(0.5), Math.Sqrt(0.5)),
        (-Math.Sqrt(0.5), -Math.Sqrt(0.5)), (Math.Sqrt(0.5), -Math.Sqrt(0.5)),
    ];

    internal StrokeGrid(WaySearchRequest request)
    {
        double radius = request.Setup.Balls[request.CueBall].Radius;
        double limit = TipContact.MiscueLimit(request.Setup.Equipment.Cue) * radius;
        Speeds = new double[SpeedCount];
        for (int i = 0; i < SpeedCount; i++)
            Speeds[i] = Slowest * Math.Pow(Fastest / Slowest, i / (SpeedCount - 1.0));
        var nodes = new List<GridNode>();
        for (int tip = 0; tip < _places.Length; tip++)
        {
            (double right, double above) = _places[tip];
            for (int i = 0; i < SpeedCount; i++)
            {
                // Middling speeds first: that is where a player looks first.
                int speed = SpeedCount / 2 + (i % 2 == 0 ? i / 2 : -(i + 1) / 2);
                double distance = limit * ((tip < FirstDiagonal) == (speed % 2 == 0) ? Inner : Outer);
                nodes.Add(new GridNode(speed, tip, Speeds[speed], right * distance, above * distance));
            }
        }

        Nodes = [.. nodes];
    }

    internal double[] Speeds { get; }

    /// <summary>The nodes in the order in which they are looked at: centre ball at a middling speed first.</summary>
    internal GridNode[] Nodes { get; }
}
