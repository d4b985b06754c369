namespace Ashery.Blending.Tree;

/// <summary>Open nodes of the tree in flat arrays, with a heap on (error, cost).</summary>
internal sealed class NodeStore(int columns, int rows)
{
    private const int First = 32;

    private readonly List<int> heap = [];
    private readonly List<int> free = [];
    private double[] error = new double[First];
    private double[] cost = new double[First];
    private ulong[] sets = new ulong[First * 2 * ((columns + 63) / 64)];
    private short[] bases = new short[First * rows];
    private int used;

    public int Words { get; } = (columns + 63) / 64;

    public int Count => heap.Count;

    /// <summary>True when so many nodes are open that memory would grow past its bound; the search then ends without a proof.</summary>
    public bool Full => heap.Count > 500_000;

    public double Error(int node) => error[node];

    public double Cost(int node) => cost[node];

    public Span<ulong> Must(int node) => sets.AsSpan(node * 2 * Words, Words);

    public Span<ulong> Without(int node) => sets.AsSpan(((node * 2) + 1) * Words, Words);

    public Span<short> Basis(int node) => bases.AsSpan(node * rows, rows);

    public int Push(double nodeError, double nodeCost)
    {
        int node;
        if (free.Count > 0)
        {
            node = free[^1];
            free.RemoveAt(free.Count - 1);
        }
        else
        {
            node = used++;
            if (node == error.Length)
            {
                Array.Resize(ref error, node * 2);
                Array.Resize(ref cost, node * 2);
                Array.Resize(ref sets, sets.Length * 2);
                Array.Resize(ref bases, bases.Length * 2);
            }
        }

        error[node] = nodeError;
        cost[node] = nodeCost;
        heap.Add(node);
        var at = heap.Count - 1;
        while (at > 0 && Before(heap[at], heap[(at - 1) / 2]))
        {
            (heap[at], heap[(at - 1) / 2]) = (heap[(at - 1) / 2], heap[at]);
            at = (at - 1) / 2;
        }

        return node;
    }

    /// <summary>Takes the node with the least bound; its room stays until <see cref="Free"/>.</summary>
    public int Pop()
    {
        var top = heap[0];
        heap[0] = heap[^1];
        heap.RemoveAt(heap.Count - 1);
        for (var at = 0; ;)
        {
            var least = at;
            for (var child = (2 * at) + 1; child <= (2 * at) + 2 && child < heap.Count; child++)
            {
                if (Before(heap[child], heap[least]))
                {
                    least = child;
                }
            }

            if (least == at)
            {
                return top;
            }

            (heap[at], heap[least]) = (heap[least], heap[at]);
            at = least;
        }
    }

    public void Free(int node) => free.Add(node);

    private bool Before(int a, int b) => error[a] < error[b] || (error[a] == error[b] && cost[a] < cost[b]);
}
