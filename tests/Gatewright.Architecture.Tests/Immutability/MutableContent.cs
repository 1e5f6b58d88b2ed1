using System.Collections;
using System.Collections.Concurrent;
using System.Text;

namespace Gatewright.Architecture.Tests.Immutability;

/// <summary>Things that can be changed by whoever holds them, even in a field that cannot.</summary>
internal static class MutableContent
{
    private static readonly HashSet<Type> Types =
    [
        typeof(List<>), typeof(Dictionary<,>), typeof(HashSet<>), typeof(SortedDictionary<,>), typeof(SortedList<,>),
        typeof(SortedSet<>), typeof(Queue<>), typeof(Stack<>), typeof(LinkedList<>), typeof(PriorityQueue<,>),
        typeof(IList<>), typeof(ICollection<>), typeof(IDictionary<,>), typeof(ISet<>), typeof(IList), typeof(IDictionary),
        typeof(ConcurrentDictionary<,>), typeof(ConcurrentBag<>), typeof(ConcurrentQueue<>), typeof(ConcurrentStack<>),
        typeof(Memory<>), typeof(Span<>), typeof(ArraySegment<>), typeof(StringBuilder), typeof(BitArray),
    ];

    public static bool Is(Type type) =>
        type.IsArray || Types.Contains(type.IsGenericType ? type.GetGenericTypeDefinition() : type);
}
