using System.Text.Json;

namespace Longrail.Scenes.Fields;

/// <summary>One field of a scene file: its name, its default and what it means.</summary>
public abstract class Field
{
    private protected Field(string name, string description, string? defaultText)
    {
        Name = name;
        Description = description;
        Default = defaultText;
        EncodedName = JsonEncodedText.Encode(name);
    }

    /// <summary>Its name within the object that it belongs to.</summary>
    public string Name { get; }

    /// <summary>What it means, in one line.</summary>
    public string Description { get; }

    /// <summary>What stands for it when it is left out, as a scene would write it or in words; null if nothing
    /// does.</summary>
    public string? Default { get; }

    internal JsonEncodedText EncodedName { get; }
}
