namespace Gatewright.Architecture.Tests.Samples;

/// <summary>Types as Core may not have them, each with one fault.</summary>
public static class Changing
{
    public static class StaticThatIsSet
    {
        private static int _count;

        public static int Next() => ++_count;
    }

    public static class StaticProperty
    {
        public static int Count { get; set; }
    }

    public static class StaticArray
    {
        private static readonly double[] Table = [1, 2];

        public static double First => Table[0];
    }

    public static class StaticList
    {
        private static readonly List<int> Seen = [];

        public static int Count => Seen.Count;
    }

    public static class StaticArrayInDisguise
    {
        public static IReadOnlyList<int> All { get; } = new[] { 1, 2 };
    }

    public struct OpenStruct
    {
        public OpenStruct(double value) => Value = value;

        public double Value { get; }
    }

    public sealed class Setter
    {
        public double Value { get; set; }
    }

    public sealed class PrivateSetter
    {
        public double Value { get; private set; }

        public void Change() => Value = 1;
    }

    public sealed class OpenField
    {
        private double _value;

        public double Next() => _value += 1;
    }

    public sealed class RemembersANumber
    {
        public double Value => field == 0 ? field = 1 : field;
    }

    public sealed class ArrayOut
    {
        public double[] Values { get; } = [1, 2];
    }

    public sealed class ListOut
    {
        public IList<double> Values { get; } = [];
    }
}
