namespace Longrail.Physics.Roots;

/// <summary>A quartic polynomial on a half line, searched interval by monotone interval.</summary>
internal readonly struct Quartic(double c0, double c1, double c2, double c3, double c4)
{
    internal double Value(double t) => c0 + t * (c1 + t * (c2 + t * (c3 + t * c4)));

    internal double Slope(double t) => c1 + t * (2 * c2 + t * (3 * c3 + t * 4 * c4));

    private double Curvature(double t) => 2 * c2 + t * (6 * c3 + t * 12 * c4);

    /// <summary>The first t in [from, limit] where the value is zero or less.</summary>
    internal double FirstAtOrBelowZero(double from, double valueFrom, double limit)
    {
        if (valueFrom <= 0) return from;
        Span<double> turns = stackalloc double[2];
        int turnCount = Inflections(from, limit, turns);
        double a = from;
        double valueA = valueFrom;
        double slopeA = Slope(a);
        for (int i = 0; i <= turnCount; i++)
        {
            double b = i < turnCount ? turns[i] : limit;
            double slopeB = Slope(b);
            // Between two inflections the slope is monotone: at most one stationary point.
            if (slopeA < 0 && slopeB > 0)
            {
                double bottom = SlopeRoot(a, b, slopeA);
                double valueBottom = Value(bottom);
                if (valueBottom <= 0) return ValueRoot(a, bottom);
                valueA = Value(b);
            }
            else
            {
                double valueB = Value(b);
                if (slopeA > 0 && slopeB < 0)
                {
                    if (valueB <= 0) return ValueRoot(SlopeRoot(a, b, slopeA), b);
                }
                else if (valueB <= 0 && valueA > 0)
                {
                    return ValueRoot(a, b);
                }

                valueA = valueB;
            }

            if (valueA <= 0) return b;
            a = b;
            slopeA = slopeB;
        }

        return double.PositiveInfinity;
    }

    /// <summary>The first t in [from, limit] where the slope is at or below a level.</summary>
    internal double FirstSlopeBelow(double level, double from, double limit)
    {
        if (Slope(from) < 0 && Slope(from) <= level) return from;
        Span<double> turns = stackalloc double[2];
        int turnCount = Inflections(from, limit, turns);
        double a = from;
        for (int i = 0; i <= turnCount; i++)
        {
            double b = i < turnCount ? turns[i] : limit;
            if (Slope(b) <= level && Slope(b) < 0)
            {
                // Bisect: this branch is rare and must not fail.
                double low = a;
                double high = b;
                for (int k = 0; k < 200 && high - low > 1e-16 * high; k++)
                {
                    double middle = 0.5 * (low + high);
                    if (middle <= low || middle >= high) break;
                    double slope = Slope(middle);
                    if (slope <= level && slope < 0) high = middle;
                    else low = middle;
                }

                return high;
            }

            a = b;
        }

        return double.PositiveInfinity;
    }

    /// <summary>Roots of the curvature inside (from, limit), in order.</summary>
    private int Inflections(double from, double limit, Span<double> into)
    {
        double a = 12 * c4;
        double b = 6 * c3;
        double c = 2 * c2;
        int count = 0;
        double first;
        double second;
        if (a == 0)
        {
            if (b == 0) return 0;
            first = second = -c / b;
        }
        else
        {
            double discriminant = b * b - 4 * a * c;
            if (discriminant <= 0) return 0;
            double q = -0.5 * (b + Math.CopySign(Math.Sqrt(discriminant), b));
            first = q / a;
            second = q == 0 ? 0 : c / q;
            if (first > second) (first, second) = (second, first);
        }

        if (first > from && first < limit) into[count++] = first;
        if (second > from && second < limit && second != first) into[count++] = second;
        return count;
    }

    /// <summary>The stationary point in (a, b), where the slope is monotone and changes sign.</summary>
    private double SlopeRoot(double a, double b, double slopeA)
    {
        double t = 0.5 * (a + b);
        for (int i = 0; i < 100; i++)
        {
            double slope = Slope(t);
            if (slope == 0) return t;
            if (slope > 0 == slopeA > 0) a = t;
            else b = t;
            double next = t - slope / Curvature(t);
            if (!(next > a && next < b)) next = 0.5 * (a + b);
            if (Math.Abs(next - t) <= 1e-15 * Math.Abs(next) || next == t) return next;
            t = next;
        }

        return t;
    }

    /// <summary>The root in (a, b], where the value falls monotonically from above zero to zero or less.</summary>
    private double ValueRoot(double a, double b)
    {
        double t = 0.5 * (a + b);
        for (int i = 0; i < 100; i++)
        {
            double value = Value(t);
            if (value == 0) return t;
            if (value > 0) a = t;
            else b = t;
            double slope = Slope(t);
            double next = slope < 0 ? t - value / slope : double.NaN;
            if (!(next > a && next < b)) next = 0.5 * (a + b);
            if (Math.Abs(next - t) <= 2e-16 * Math.Abs(next) || next == t) return next;
            t = next;
        }

        return t;
    }
}
