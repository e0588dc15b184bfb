"""The science: pure functions on frozen values; knows no other package of the product."""
