using Longrail.Physics.Shots.Readings;

namespace Longrail.Workbench.Tables;

/// <summary>How one page looks at its table: units, numbering, what is picked. Nothing here changes the shot.</summary>
internal sealed class BenchView
{
    // A drag that ends this near to a snap point takes it, metres.
    public const double SnapReach = 0.012;

    /// <summary>Raised after anything has changed.</summary>
    public event Action? Changed;

    /// <summary>The unit of lengths.</summary>
    public LengthUnit Length { get; private set; }

    /// <summary>The unit of speeds as scenes write it: "m/s" or "mph".</summary>
    public string Speed { get; private set; } = "m/s";

    /// <summary>How diamonds are numbered.</summary>
    public DiamondNumbering Numbering { get; private set; }

    /// <summary>The ball whose fields are shown; null for none.</summary>
    public string? Ball { get; private set; }

    /// <summary>The thing that the next click on the table places ("ball:9", "aim", "contact"); null for
    /// none.</summary>
    public string? Placing { get; private set; }

    /// <summary>Whether drags snap to diamonds, spots and cushions.</summary>
    public bool Snaps { get; private set; } = true;

    /// <summary>The event that is marked in the list and on the drawing; null for none.</summary>
    public int? Event { get; private set; }

    /// <summary>Whether the window is as narrow as a phone: drawings then have larger type against the table.</summary>
    public bool IsNarrow { get; private set; }

    /// <summary>Takes up the width of the window.</summary>
    /// <param name="pixels">Its width, CSS pixels.</param>
    public void Fit(double pixels)
    {
        bool narrow = pixels < 620;
        if (narrow == IsNarrow)
            return;
        IsNarrow = narrow;
        Changed?.Invoke();
    }

    /// <summary>The units and the numbering in one word, for the browser to keep.</summary>
    public string Kept => $"{Length}.{Speed}.{Numbering}";

    /// <summary>Takes up what <see cref="Kept"/> wrote; whatever makes no sense is left as it is.</summary>
    public void Restore(string? kept)
    {
        string[] parts = (kept ?? "").Split('.');
        if (parts.Length != 3)
            return;
        Set(
            Enum.TryParse(parts[0], out LengthUnit length) && Enum.IsDefined(length) ? length : null,
            parts[1] is "m/s" or "mph" ? parts[1] : null,
            Enum.TryParse(parts[2], out DiamondNumbering numbering) && Enum.IsDefined(numbering) ? numbering : null);
    }

    /// <summary>Changes any of it.</summary>
    public void Set(
        LengthUnit? length = null, string? speed = null, DiamondNumbering? numbering = null, bool? snaps = null)
    {
        Length = length ?? Length;
        Speed = speed ?? Speed;
        Numbering = numbering ?? Numbering;
        Snaps = snaps ?? Snaps;
        Changed?.Invoke();
    }

    /// <summary>Picks a ball.</summary>
    public void Pick(string? ball)
    {
        Ball = ball;
        Changed?.Invoke();
    }

    /// <summary>Makes the next click on the table place a thing, or none.</summary>
    public void Place(string? thing)
    {
        Placing = thing;
        Changed?.Invoke();
    }

    /// <summary>Takes the mark off an event, unless another has it by now.</summary>
    public void Unmark(int index)
    {
        if (index == Event)
            Mark(null);
    }

    /// <summary>Marks an event, or none.</summary>
    public void Mark(int? index)
    {
        if (index == Event)
            return;
        Event = index;
        Changed?.Invoke();
    }
}
