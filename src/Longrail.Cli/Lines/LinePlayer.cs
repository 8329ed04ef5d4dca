using System.Buffers;
using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using Longrail.Physics.Shots;

namespace Longrail.Cli.Lines;

/// <summary>Plays a stream of scenes, one a line, on all cores, and writes one answer a line in the same
/// order.</summary>
/// <remarks>
/// One task cuts the input into batches, one player a core plays them, and the caller's thread writes the answers. Both
/// queues are bounded, so a slow reader of the output holds back the reading of the input, and memory does not grow
/// with the input.
/// </remarks>
public sealed class LinePlayer(ShotOptions options)
{
    // Larger buffers are not kept: one line in a million may need one.
    private const int LargestKeptBuffer = 8 * 1024 * 1024;

    // Answers are megabytes a batch; buffers that were used once are used again.
    private readonly ConcurrentBag<ArrayBufferWriter<byte>> _buffers = [];
    private readonly int _players = Environment.ProcessorCount;
    private long _failed;

    /// <summary>Plays all lines.</summary>
    /// <param name="input">The scenes.</param>
    /// <param name="output">Where the answers go.</param>
    /// <param name="interrupted">Ends the run early.</param>
    /// <returns>How many lines could not be played.</returns>
    /// <exception cref="OperationCanceledException">The run was ended early.</exception>
    public long Play(Stream input, Stream output, CancellationToken interrupted)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(interrupted);
        using var toPlay = new BlockingCollection<LineBatch>(2 * _players);
        using var inOrder = new BlockingCollection<LineBatch>(4 * _players);
        var tasks = new Task[1 + _players];
        tasks[0] = Start(() => Read(new LineBatchReader(input), toPlay, inOrder, ended.Token));
        for (int i = 1; i < tasks.Length; i++)
            tasks[i] = Start(() => PlayBatches(toPlay, ended.Token));

        try
        {
            foreach (LineBatch batch in inOrder.GetConsumingEnumerable(ended.Token))
                Answer(batch, output, ended.Token);
        }
        catch (OperationCanceledException)
        {
            // If a task met something unforeseen, that is what the caller wants to know.
            foreach (Task task in tasks)
            {
                if (task.Exception?.InnerException is { } fault)
                    ExceptionDispatchInfo.Throw(fault);
            }

            throw;
        }
        finally
        {
            // If nobody reads the answers any more, the tasks are not waited for: one may be waiting for input without
            // end.
            ended.Cancel();
        }

        return _failed;

        // A task that fails ends the run, so that nobody waits for it in vain.
        Task Start(Action work)
        {
            const TaskContinuationOptions OnFault =
                TaskContinuationOptions.OnlyOnFaulted | TaskContinuationOptions.ExecuteSynchronously;
            var task = Task.Factory.StartNew(
                work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            task.ContinueWith(_ => ended.Cancel(), CancellationToken.None, OnFault, TaskScheduler.Default);
            return task;
        }
    }

    private static void Read(
        LineBatchReader lines,
        BlockingCollection<LineBatch> toPlay,
        BlockingCollection<LineBatch> inOrder,
        CancellationToken ended)
    {
        while (lines.Next() is { } batch)
        {
            inOrder.Add(batch, ended);
            toPlay.Add(batch, ended);
        }

        toPlay.CompleteAdding();
        inOrder.CompleteAdding();
    }

    private void PlayBatches(BlockingCollection<LineBatch> toPlay, CancellationToken ended)
    {
        using var player = new BatchPlayer(options);
        foreach (LineBatch batch in toPlay.GetConsumingEnumerable(ended))
            player.Play(batch, _buffers.TryTake(out ArrayBufferWriter<byte>? used) ? used : new());
    }

    private void Answer(LineBatch batch, Stream output, CancellationToken ended)
    {
        batch.Wait(ended);
        ArrayBufferWriter<byte> answers = batch.Answers!;
        output.Write(answers.WrittenSpan);
        output.Flush();
        _failed += batch.Failed;
        batch.Dispose();
        if (answers.Capacity > LargestKeptBuffer)
            return;
        answers.ResetWrittenCount();
        _buffers.Add(answers);
    }
}
