using System.Buffers;
using System.Text.Json;
using Longrail.Physics.Shots;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Cli.Lines;

/// <summary>Plays the lines of a batch one after the other. Each player works on one core and keeps its own
/// writer.</summary>
internal sealed class BatchPlayer(ShotOptions options) : IDisposable
{
    private readonly Utf8JsonWriter _json = new(Stream.Null, JsonForm.OneLine);

    /// <summary>Plays a batch and completes it. Blank lines have no answer.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="answers">An empty buffer for the answers.</param>
    public void Play(LineBatch batch, ArrayBufferWriter<byte> answers)
    {
        batch.Answers = answers;
        ReadOnlySpan<byte> rest = batch.Text;
        for (long line = batch.FirstLine; !rest.IsEmpty; line++)
        {
            int end = rest.IndexOf((byte)'\n');
            ReadOnlySpan<byte> text = end < 0 ? rest : rest[..end];
            rest = end < 0 ? [] : rest[(end + 1)..];
            if (!text.Trim(" \t\r"u8).IsEmpty)
                Play(text, line, batch, answers);
        }

        batch.Complete();
    }

    /// <inheritdoc/>
    public void Dispose() => _json.Dispose();

    private void Play(ReadOnlySpan<byte> text, long line, LineBatch batch, ArrayBufferWriter<byte> answers)
    {
        _json.Reset(answers);
        SceneCompilation compilation = SceneReader.ReadReady(text);
        IReadOnlyList<SceneError> errors = compilation.Errors;
        if (compilation.Ready is { } scene && Outcome(scene, ref errors) is { } outcome)
        {
            OutcomeWriter.Write(_json, outcome);
        }
        else
        {
            batch.Failed++;
            ErrorLineWriter.Write(_json, line, errors);
        }

        _json.Flush();
        answers.GetSpan(1)[0] = (byte)'\n';
        answers.Advance(1);
    }

    // The reader refuses what the physics would; should it ever let something through, that line fails and the rest is
    // played.
    private Outcome? Outcome(ReadyScene scene, ref IReadOnlyList<SceneError> errors)
    {
        try
        {
            return Scenes.Outcomes.Outcome.Of(scene, options);
        }
        catch (ArgumentException fault)
        {
            errors = [new SceneError("", fault.Message)];
            return null;
        }
    }
}
