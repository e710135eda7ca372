namespace LogBook.Application.Data;

/// <summary>A row that belongs to one customer; the wall filters it on reading and checks it on writing.</summary>
public interface ICustomerOwned
{
    /// <summary>The customer.</summary>
    int CustomerId { get; }
}
