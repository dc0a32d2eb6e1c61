/** Between engine and web: view models out of bank and course. Knows neither HTTP nor HTML. */
package soapstone.desk;
