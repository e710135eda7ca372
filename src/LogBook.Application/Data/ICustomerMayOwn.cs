namespace LogBook.Application.Data;

/// <summary>A row that belongs to one customer or, when it has none, to the firm alone.</summary>
public interface ICustomerMayOwn
{
    /// <summary>The customer, or null for the firm.</summary>
    int? CustomerId { get; }
}
