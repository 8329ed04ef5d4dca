namespace Longrail.Workbench.Tables;

/// <summary>The steps of a table, each as a link: what undo and redo walk along.</summary>
/// <remarks>Links, not scenes: a step takes a few hundred bytes, and the browser keeps the same list, so that undo
/// survives a reload.</remarks>
internal sealed class SceneHistory
{
    /// <summary>The most steps that are kept.</summary>
    public const int Most = 200;

    // What the browser sends back after a reload is one message; see WorkbenchHost.
    private const int MostCharacters = 250_000;

    private readonly List<string> _links = [];

    /// <summary>The steps, oldest first.</summary>
    public IReadOnlyList<string> Links => _links;

    /// <summary>Where among them the table stands; -1 when there is none.</summary>
    public int Place { get; private set; } = -1;

    /// <summary>How many of the oldest steps have been forgotten since the start or the last
    /// <see cref="Restore"/>.</summary>
    public int Forgotten { get; private set; }

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => Place > 0;

    /// <summary>Whether there is a step to do again.</summary>
    public bool CanRedo => Place >= 0 && Place < _links.Count - 1;

    /// <summary>The link of the table as it stands.</summary>
    public string Current => Place >= 0 ? _links[Place] : "";

    /// <summary>Adds a step after the present one; what was undone before it is forgotten. The same table twice is one
    /// step.</summary>
    public void Add(string link)
    {
        if (link == Current)
            return;
        _links.RemoveRange(Place + 1, _links.Count - Place - 1);
        _links.Add(link);
        while (_links.Count > Most || (_links.Count > 1 && _links.Sum(one => one.Length) > MostCharacters))
        {
            _links.RemoveAt(0);
            Forgotten++;
        }

        Place = _links.Count - 1;
    }

    /// <summary>Puts another table in place of the present step: a row of nudges is one step.</summary>
    public void Replace(string link)
    {
        if (Place < 0)
        {
            Add(link);
            return;
        }

        _links.RemoveRange(Place, _links.Count - Place);
        _links.Add(link);
    }

    /// <summary>One step back.</summary>
    public string Undo() => CanUndo ? _links[--Place] : Current;

    /// <summary>One step forward.</summary>
    public string Redo() => CanRedo ? _links[++Place] : Current;

    /// <summary>Takes up the steps that a browser remembers; nothing if they make no sense.</summary>
    public bool Restore(IReadOnlyList<string> links, int place)
    {
        if (links.Count is 0 or > Most || place < 0 || place >= links.Count
            || links.Any(link => link.Length > SceneLink.Longest))
            return false;
        _links.Clear();
        _links.AddRange(links);
        Place = place;
        Forgotten = 0;
        return true;
    }
}
