using Longrail.Coaching.Ways.Search;
using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Tests.Ways.Search;

/// <summary>Strokes spread evenly over all that can be played: every aim, the logarithm of the speed from 0.7 to 6 m/s,
/// and the tip anywhere within the miscue limit.</summary>
internal static class RandomStrokes
{
    internal static Stroke[] Of(WaySearchRequest request, int seed, int count)
    {
        var random = new Random(seed);
        double limit = TipContact.MiscueLimit(request.Setup.Equipment.Cue) * request.Setup.Balls[request.CueBall].Radius;
        var strokes = new Stroke[count];
        for (int i = 0; i < count; i++)
        {
            double aim = 2 * Math.PI * random.NextDouble();
            double speed = 0.7 * Math.Pow(6 / 0.7, random.NextDouble());
            double off = limit * Math.Sqrt(random.NextDouble());
            (double sin, double cos) = Math.SinCos(2 * Math.PI * random.NextDouble());
            strokes[i] = new Stroke(aim, speed, off * cos, off * sin, 0);
        }

        return strokes;
    }
}
