using Longrail.TestKit;
using Longrail.TestKit.Reference;

namespace Longrail.Physics.Tests;

/// <summary>How the cushion tables are to be read: a ball that comes in at 1 m/s at an angle from the normal, in the
/// rail's frame.</summary>
/// <remarks>The tables need no ball size: with spin given as R w it cancels. Running side, for a ball that travels
/// along +x into +y, rolls it along the rail: w_z positive (the point at the nose moves backwards).</remarks>
internal static class CushionTable
{
    internal static RailMotion In(double angleDegrees, double rollRatio, double side, double radius)
    {
        (double sin, double cos) = Math.SinCos(angleDegrees * Math.PI / 180);
        return new RailMotion
        {
            Vx = sin,
            Vy = cos,
            Wx = -rollRatio * cos / radius,
            Wy = rollRatio * sin / radius,
            Wz = side / radius,
        };
    }

    internal static double AngleOut(RailMotion m) => Math.Atan2(m.Vx, -m.Vy) * 180 / Math.PI;

    internal static (double Angle, double Speed) Final(RailMotion m, double radius)
    {
        double x = (5 * m.Vx + 2 * radius * m.Wy) / 7, y = (5 * m.Vy - 2 * radius * m.Wx) / 7;
        return (Math.Atan2(x, -y) * 180 / Math.PI, Math.Sqrt(x * x + y * y));
    }

    internal static void CheckPlain(
        GoldenRow row, Func<double, double, double, RailMotion> rebound, double radius = 0.02625)
    {
        RailMotion roll = rebound(row["angle"].Value, 1, 0), stun = rebound(row["angle"].Value, 0, 0);
        Check(row, roll, radius, "roll_out", "roll_out_speed", "roll_final", "roll_final_speed");
        Expect.Near(row["roll_wz"].Value, roll.Wz * radius, Tolerance.CushionSpeed, $"{row}: roll_wz");
        Check(row, stun, radius, "stun_out", "stun_out_speed", "stun_final", "stun_final_speed");
    }

    internal static void CheckSide(
        GoldenRow row, Func<double, double, double, RailMotion> rebound, double radius = 0.02625)
    {
        RailMotion after = rebound(row["angle"].Value, 1, row["side"].Value);
        Check(row, after, radius, "out", "out_speed", "final", "final_speed");
        Expect.Near(row["wz"].Value, after.Wz * radius, Tolerance.CushionSpeed, $"{row}: wz");
    }

    internal static void CheckStraight(
        GoldenRow row, Func<double, double, double, RailMotion> rebound, double radius = 0.02625)
    {
        RailMotion after = rebound(0, row["roll_ratio"].Value, 0);
        Expect.Near(row["out_speed"].Value, -after.Vy, Tolerance.CushionSpeed, $"{row}: out_speed");
        Expect.Near(
            row["final_speed"].Value, Final(after, radius).Speed, Tolerance.CushionSpeed, $"{row}: final_speed");
    }

    private static void Check(
        GoldenRow row,
        RailMotion after,
        double radius,
        string angle,
        string speed,
        string finalAngle,
        string finalSpeed)
    {
        (double endAngle, double endSpeed) = Final(after, radius);
        Expect.Near(row[angle].Value, AngleOut(after), Tolerance.CushionAngle, $"{row}: {angle}");
        Expect.Near(
            row[speed].Value, Math.Sqrt(after.Vx * after.Vx + after.Vy * after.Vy), Tolerance.CushionSpeed,
            $"{row}: {speed}");
        Expect.Near(row[finalAngle].Value, endAngle, Tolerance.CushionAngle, $"{row}: {finalAngle}");
        Expect.Near(row[finalSpeed].Value, endSpeed, Tolerance.CushionSpeed, $"{row}: {finalSpeed}");
    }
}
