using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Search;

/// <summary>A few cushions in order, packed into a number: three bits each, the first lowest.</summary>
/// <param name="Code">The number; 0 is an empty list.</param>
internal readonly record struct CushionList(int Code)
{
    /// <summary>The most that fit; one more is dropped in silence, so no caller goes near it.</summary>
    internal const int Most = 10;

    internal int Count
    {
        get
        {
            int count = 0;
            for (int code = Code; code != 0; code >>= 3) count++;
            return count;
        }
    }

    internal CushionName this[int index] => (CushionName)(((Code >> (3 * index)) & 7) - 1);

    internal static CushionList Of(IReadOnlyList<CushionName> cushions)
    {
        var list = default(CushionList);
        foreach (CushionName cushion in cushions) list = list.With(cushion);
        return list;
    }

    internal CushionList With(CushionName cushion) => new(Code | (((int)cushion + 1) << (3 * Count)));

    /// <summary>The first few.</summary>
    internal CushionList First(int count) => new(Code & ((1 << (3 * count)) - 1));

    internal bool EndsWith(CushionName cushion) => Count is > 0 and var count && this[count - 1] == cushion;

    /// <summary>How many cushions two lists have in common from the start.</summary>
    internal int CommonWith(CushionList other)
    {
        int common = 0;
        for (int a = Code, b = other.Code; a != 0 && b != 0 && (a & 7) == (b & 7); a >>= 3, b >>= 3) common++;
        return common;
    }

    internal CushionName[] ToArray()
    {
        var cushions = new CushionName[Count];
        for (int i = 0; i < cushions.Length; i++) cushions[i] = this[i];
        return cushions;
    }
}
