namespace Longrail.Physics.Shots;

/// <summary>A buffer that grows once and is then reused.</summary>
internal struct Buffer<T>
{
    private T[] _items;

    internal int Count;

    internal Buffer(int capacity) => _items = new T[capacity];

    internal readonly Span<T> Items => _items.AsSpan(0, Count);

    internal ref T Add()
    {
        if (Count == _items.Length) Array.Resize(ref _items, 2 * Count);
        return ref _items[Count++];
    }

    internal readonly ref T this[int index] => ref _items[index];
}
