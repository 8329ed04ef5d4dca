namespace Longrail.Coaching.Statistics;

/// <summary>The F ratio of groups that are dealt out again and again over the same values.</summary>
internal sealed class GroupRatio
{
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly SumsOfProducts _all;
    private readonly double[] _sumX;
    private readonly double[] _sumY;
    private readonly int[] _count;
    private readonly bool _hasCovariate;

    internal GroupRatio(IReadOnlyList<CovariatePair> pairs, int groups)
    {
        double meanX = pairs.Average(pair => pair.Covariate);
        double meanY = pairs.Average(pair => pair.Value);
        _x = [.. pairs.Select(pair => pair.Covariate - meanX)];
        _y = [.. pairs.Select(pair => pair.Value - meanY)];
        _all = SumsOfProducts.Of(pairs);
        _hasCovariate = _all.Xx > 0;
        _sumX = new double[groups];
        _sumY = new double[groups];
        _count = new int[groups];
    }

    /// <summary>The ratio for one dealing.</summary>
    /// <param name="group">The group of each value.</param>
    internal double Of(int[] group)
    {
        Array.Clear(_sumX);
        Array.Clear(_sumY);
        Array.Clear(_count);
        for (int i = 0; i < group.Length; i++)
        {
            _sumX[group[i]] += _x[i];
            _sumY[group[i]] += _y[i];
            _count[group[i]]++;
        }

        var between = default(SumsOfProducts);
        int groups = 0;
        for (int g = 0; g < _count.Length; g++)
        {
            if (_count[g] == 0) continue;
            groups++;
            double n = _count[g];
            between += new SumsOfProducts(
                _sumX[g] * _sumX[g] / n, _sumX[g] * _sumY[g] / n, _sumY[g] * _sumY[g] / n);
        }

        var within = new SumsOfProducts(
            Math.Max(0, _all.Xx - between.Xx), _all.Xy - between.Xy, Math.Max(0, _all.Yy - between.Yy));
        int freedom = group.Length - groups - (_hasCovariate ? 1 : 0);
        double squares = Math.Max(0, _all.Left - within.Left);
        return within.Left > 0 ? squares / Math.Max(1, groups - 1) / (within.Left / freedom) : double.MaxValue;
    }
}
