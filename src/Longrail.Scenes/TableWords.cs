using Longrail.Physics.Equipment;

namespace Longrail.Scenes;

/// <summary>The names of cushions and pockets as scenes and outcomes write them.</summary>
public static class TableWords
{
    private static readonly string[] _cushions = ["head", "foot", "left", "right"];
    private static readonly string[] _pockets =
        ["head-right", "head-left", "right-side", "left-side", "foot-right", "foot-left"];

    /// <summary>The cushions in the order of <see cref="CushionName"/>.</summary>
    public static IReadOnlyList<string> Cushions => _cushions;

    /// <summary>The pockets in the order of <see cref="PocketName"/>.</summary>
    public static IReadOnlyList<string> Pockets => _pockets;

    /// <summary>The name of a cushion.</summary>
    public static string Of(CushionName cushion) => _cushions[(int)cushion];

    /// <summary>The name of a pocket.</summary>
    public static string Of(PocketName pocket) => _pockets[(int)pocket];

    /// <summary>The cushion of that name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static CushionName Cushion(string name) => (CushionName)Find(_cushions, name);

    /// <summary>The pocket of that name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static PocketName Pocket(string name) => (PocketName)Find(_pockets, name);

    private static int Find(string[] names, string name)
    {
        int index = Array.IndexOf(names, name);
        return index >= 0
            ? index
            : throw new ArgumentException($"\"{name}\" is none of {string.Join(", ", names)}.", nameof(name));
    }
}
